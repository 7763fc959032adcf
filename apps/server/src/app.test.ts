import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { HttpBindings } from "@hono/node-server";
import { Problem } from "@partsproof/house/protocol";
import { temporaryHouse, type TemporaryHouse } from "@partsproof/testkit";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { createServerApp } from "./app.ts";

/** What node-server hands over of a connection. */
const socketOf = (remoteAddress: string, localAddress = remoteAddress): HttpBindings =>
  ({ incoming: { socket: { remoteAddress, localAddress } } }) as unknown as HttpBindings;

describe("the server's answers", () => {
  const host = "127.0.0.1:4480";
  let house: TemporaryHouse;
  let folder: string;
  let app: ReturnType<typeof createServerApp>;

  beforeAll(async () => {
    house = await temporaryHouse("sqlite");
    folder = mkdtempSync(join(tmpdir(), "partsproof-web-"));
    mkdirSync(join(folder, "assets"));
    writeFileSync(join(folder, "index.html"), "<!doctype html><title>Parts & Proof</title>");
    writeFileSync(join(folder, "mark.svg"), "<svg/>");
    writeFileSync(
      join(folder, "assets", "app-8c1f.js"),
      `console.log("${"long enough to compress ".repeat(100)}")`,
    );
    writeFileSync(join(folder, "..", "partsproof-outside.txt"), "nobody’s business");
    app = createServerApp({
      house: house.fetch,
      webFolder: folder,
      network: false,
      origin: null,
      tls: false,
    });
  });
  afterAll(async () => {
    rmSync(join(folder, "..", "partsproof-outside.txt"), { force: true });
    rmSync(folder, { recursive: true, force: true });
    await house.close();
  });

  const ask = async (path: string, init: RequestInit = {}, from: Record<string, string> = {}) =>
    app.fetch(
      new Request(`http://${host}${path}`, { ...init, headers: { host, ...from } }),
      socketOf("127.0.0.1"),
    );
  const codes = async (response: Response): Promise<readonly string[]> =>
    Problem.parse(await response.json()).issues.map(({ code }) => code);

  it("the house answers below /api, in its own words also for what it does not know", async () => {
    expect(await (await ask("/api/health")).json()).toStrictEqual({ ok: true, database: "sqlite" });
    const unknown = await ask("/api/cellar");
    expect(unknown.status).toBe(404);
    expect(await codes(unknown)).toStrictEqual(["unknown_route"]);
  });

  it.each(["127.0.0.1:4480", "localhost:4480", "LOCALHOST", "[::1]:4480", "127.0.0.1"])(
    "host %s is let in",
    async (name) => {
      expect((await ask("/api/health", {}, { host: name })).status).toBe(200);
    },
  );

  it.each([
    "evil.example",
    "127.0.0.1.evil.example:4480",
    "localhost.evil.example",
    "192.168.1.7:4480",
    "[::2]",
    "[",
    "",
  ])("host %j is refused on every path", async (name) => {
    for (const path of ["/api/health", "/", "/assets/app-8c1f.js"]) {
      const answer = await ask(path, {}, { host: name });
      expect(answer.status, path).toBe(403);
      expect(await codes(answer)).toStrictEqual(["host_not_this_machine"]);
    }
  });

  it("a write from another page is refused and changes nothing; from its own page or a program it is not", async () => {
    const write = (from: Record<string, string>) =>
      ask(
        "/api/households",
        { method: "POST", body: JSON.stringify({ name: "North", currency: "EUR" }) },
        { "content-type": "application/json", ...from },
      );
    for (const origin of [
      "http://evil.example",
      "http://127.0.0.1:3000",
      "http://localhost:4480",
      "null",
      "no address",
      "",
    ]) {
      const answer = await write({ origin });
      expect(answer.status, origin).toBe(403);
      expect(await codes(answer)).toStrictEqual(["origin_not_own"]);
    }
    expect(await house.store.transaction((records) => records.households())).toStrictEqual([]);
    expect((await write({ origin: `http://${host}` })).status).toBe(201);
    expect((await write({})).status).toBe(201);
    expect(await house.store.transaction((records) => records.households())).toHaveLength(2);
  });

  it("every answer carries the headers that keep scripts of others out", async () => {
    for (const path of ["/", "/api/health", "/assets/app-8c1f.js", "/assets/none.js"]) {
      const { headers } = await ask(path);
      const policy = headers.get("content-security-policy") ?? "";
      expect(policy, path).toMatch(/script-src 'self'(;|$)/);
      expect(policy, path).toMatch(/style-src 'self'(;|$)/);
      expect(policy, path).not.toMatch(/unsafe|\*/);
      expect(policy, path).toMatch(/default-src 'self'.*object-src 'none'.*frame-ancestors 'none'/);
      expect(headers.get("cross-origin-resource-policy"), path).toBe("same-origin");
      expect(headers.get("x-frame-options"), path).toBe("DENY");
      expect(headers.get("x-content-type-options"), path).toBe("nosniff");
      expect(headers.get("referrer-policy"), path).toBe("no-referrer");
    }
  });

  it("files have their types; those with a hash in their name are kept, the page is asked for again", async () => {
    const script = await ask("/assets/app-8c1f.js");
    expect(script.headers.get("content-type")).toMatch(/^text\/javascript/);
    expect(script.headers.get("cache-control")).toBe("public, max-age=31536000, immutable");
    const mark = await ask("/mark.svg");
    expect(mark.headers.get("content-type")).toMatch(/^image\/svg\+xml/);
    expect(mark.headers.get("cache-control")).toBe("no-cache");
    const page = await ask("/");
    expect(page.headers.get("content-type")).toMatch(/^text\/html/);
    expect(page.headers.get("cache-control")).toBe("no-cache");
  });

  it("compresses what is long enough, for those who ask", async () => {
    const plain = await ask("/assets/app-8c1f.js");
    const packed = await ask("/assets/app-8c1f.js", {}, { "accept-encoding": "gzip" });
    expect(plain.headers.get("content-encoding")).toBeNull();
    expect(packed.headers.get("content-encoding")).toBe("gzip");
    const [a, b] = [await plain.arrayBuffer(), await packed.arrayBuffer()];
    expect(b.byteLength).toBeLessThan(a.byteLength / 5);
  });

  it("of the house's answers compresses the long ones only: a sheet is sooner there as it is", async () => {
    const gzip = { "accept-encoding": "gzip" };
    const short = await ask("/api/health", {}, gzip);
    expect(short.headers.get("content-encoding")).toBeNull();
    expect(short.headers.get("content-length")).toBe(String((await short.arrayBuffer()).byteLength));
    const long = await ask("/api/openapi.json", {}, gzip);
    expect(long.headers.get("content-encoding")).toBe("gzip");
    expect(long.headers.get("content-length")).toBeNull();
  });

  it("any place inside the app gets its page; a missing asset and a write do not", async () => {
    for (const place of ["/shelf", "/flights/01j/tasters", "/findings?after=1"]) {
      const page = await ask(place);
      expect(page.status).toBe(200);
      expect(await page.text()).toContain("<title>Parts & Proof</title>");
    }
    const missing = await ask("/assets/app-0000.js");
    expect(missing.status).toBe(404);
    expect(await codes(missing)).toStrictEqual(["unknown_address"]);
    expect((await ask("/shelf", { method: "POST" })).status).toBe(404);
  });

  it.each([
    "/../partsproof-outside.txt",
    "/%2e%2e/partsproof-outside.txt",
    "/..%2fpartsproof-outside.txt",
    "/assets/..%5c..%5cpartsproof-outside.txt",
  ])("gives no file outside the app's folder: %s", async (path) => {
    expect(await (await ask(path)).text()).not.toContain("business");
  });

  it("cuts off a body larger than the house reads", async () => {
    const answer = await ask(
      "/api/restore",
      { method: "POST", body: "x".repeat(32 * 1024 * 1024 + 1) },
      { "content-type": "application/json" },
    );
    expect(answer.status).toBe(413);
    expect(await codes(answer)).toStrictEqual(["body_too_large"]);
  });

  it("refuses a body by the length it states, before any of it is read", async () => {
    let read = 0;
    const body = new ReadableStream<Uint8Array>(
      { pull: (out) => out.enqueue(new Uint8Array((read += 1))) },
      { highWaterMark: 0 },
    );
    const init = { method: "POST", body, duplex: "half" as const };
    const answer = await ask("/api/restore", init, { "content-length": String(32 * 1024 * 1024 + 1) });
    expect(answer.status).toBe(413);
    expect(await codes(answer)).toStrictEqual(["body_too_large"]);
    expect(read).toBe(0);
  });
});
