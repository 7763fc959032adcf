import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import type { AddressInfo } from "node:net";
import { hostname, tmpdir } from "node:os";
import { join } from "node:path";
import { type SpawnedServer, spawnServer } from "@partsproof/testkit";
import { createAdaptorServer } from "@hono/node-server";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { createServerApp } from "./app.ts";
import { selfSigned } from "./fixtures/table/certificate.ts";
import { networkAddress } from "./fixtures/table/network-address.ts";
import { PASSPHRASE, setPassphrase } from "./fixtures/table/own-house.ts";
import { type Answer, codesOf, wire } from "./fixtures/table/wire.ts";

const OWN = { "x-partsproof": "1" };
const cookieOf = ({ headers }: Answer): string => headers["set-cookie"]?.[0] ?? "";
const signIn = (address: string, passphrase = PASSPHRASE, more: Parameters<typeof wire>[1] = {}) =>
  wire(`${address}/api/door/sign-in`, { method: "POST", body: { passphrase }, ...more });

describe("the server on a network, over real sockets", () => {
  const address = networkAddress();
  let folder: string;
  let server: SpawnedServer;
  let here: string;
  let table: string;

  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), "partsproof-network-"));
    await setPassphrase(folder);
    server = await spawnServer({ PARTSPROOF_DATA: folder, HOST: "0.0.0.0" });
    here = server.address;
    table = `http://${address}:${new URL(here).port}`;
  }, 60_000);
  afterAll(async () => {
    await server.end("SIGTERM");
    rmSync(folder, { recursive: true, force: true });
  });

  it("D5 refuses a short passphrase at the start option, and never prints one", async () => {
    await expect(setPassphrase(folder, "short")).rejects.toThrow(/at least 15 characters/);
    expect(server.printed()).not.toContain(PASSPHRASE);
  });

  it("the start line tells this machine's address, the table's, and shows it as a square code", () => {
    const printed = server.printed();
    expect(printed).toMatch(/^Parts & Proof is open at http:\/\/127\.0\.0\.1:\d+$/m);
    expect(printed).toContain(`At the table: ${table}`);
    const square = printed.split("\n").filter((line) => /^[█▀▄ ]{20,}$/.test(line));
    expect(square.length).toBeGreaterThan(10);
  });

  it("D1 this machine is asked for nothing, the network is; a header that says it was passed on is no way round", async () => {
    expect((await wire(`${here}/api/households`)).status).toBe(200);
    expect(codesOf(await wire(`${table}/api/households`))).toEqual(["sign_in_needed"]);
    for (const [name, value] of [
      ["x-forwarded-for", "127.0.0.1"],
      ["forwarded", "for=127.0.0.1"],
      ["x-real-ip", "127.0.0.1"],
      ["via", "1.1 proxy"],
    ] as const) {
      const passedOn = await wire(`${here}/api/households`, { headers: { [name]: value } });
      expect([name, passedOn.status]).toEqual([name, 401]);
      const pretended = await wire(`${table}/api/households`, { headers: { [name]: value } });
      expect([name, pretended.status]).toEqual([name, 401]);
    }
    const renamed = await wire(`${table}/api/households`, { headers: { host: "127.0.0.1" } });
    expect(renamed.status).toBe(401);
  });

  it("D1 a name that is not this machine's is refused, wherever it points to", async () => {
    for (const [base, host] of [
      [here, "evil.example"],
      [table, "evil.example"],
      [table, `${address}.evil.example`],
      [table, "192.168.254.254"],
      [here, `localhost.evil.example:${new URL(here).port}`],
    ] as const) {
      const answer = await wire(`${base}/api/door`, { headers: { host } });
      expect([host, answer.status]).toEqual([host, 403]);
      expect(codesOf(answer)).toEqual(["host_not_this_machine"]);
    }
    const own = hostname().toLowerCase();
    for (const host of [address, own, `${own.split(".")[0]}.local`]) {
      expect([host, (await wire(`${table}/api/door`, { headers: { host } })).status]).toEqual([host, 200]);
    }
    // Named so on this machine's own connection, it is the network's all the same.
    expect((await wire(`${here}/api/households`, { headers: { host: own } })).status).toBe(401);
  });

  it("headers that a browser heeds only over HTTPS or on loopback are sent only there", async () => {
    const names = ["cross-origin-opener-policy", "origin-agent-cluster"];
    const sent = async (base: string): Promise<readonly (string | undefined)[]> => {
      const { headers } = await wire(`${base}/api/door`);
      expect(headers["content-security-policy"]).toContain("script-src 'self'");
      return names.map((name) => headers[name]?.toString());
    };
    expect(await sent(here)).toEqual(["same-origin", "?1"]);
    expect(await sent(table)).toEqual([undefined, undefined]);
  });

  it("D4 signs in and out over the network; D6 another page's request is refused, whatever it carries", async () => {
    const signed = await signIn(table);
    expect(signed.status).toBe(204);
    const cookie = cookieOf(signed);
    expect(cookie).toMatch(/^partsproof=[0-9a-f]{64}; Path=\/; Max-Age=\d+; HttpOnly; SameSite=Strict$/);
    const session = { cookie: cookie.split(";")[0] ?? "" };
    expect((await wire(`${table}/api/households`, { headers: session })).status).toBe(200);
    const add = (headers: Readonly<Record<string, string>>) =>
      wire(`${table}/api/households`, {
        method: "POST",
        body: { name: "N" },
        headers: { ...session, ...headers },
      });
    expect(codesOf(await add({}))).toEqual(["own_header_missing"]);
    expect(codesOf(await add({ ...OWN, origin: "http://evil.example" }))).toEqual(["origin_not_own"]);
    expect(codesOf(await add({ ...OWN, origin: here }))).toEqual(["origin_not_own"]);
    expect(codesOf(await add({ ...OWN, "sec-fetch-site": "cross-site" }))).toEqual(["site_not_own"]);
    expect(codesOf(await add({ ...OWN, "sec-fetch-site": "same-site" }))).toEqual(["site_not_own"]);
    const read = await wire(`${table}/api/households`, {
      headers: { ...session, "sec-fetch-site": "cross-site", "sec-fetch-mode": "no-cors" },
    });
    expect(codesOf(read)).toEqual(["site_not_own"]);
    expect((await add({ ...OWN, origin: table, "sec-fetch-site": "same-origin" })).status).toBe(201);
    const out = await wire(`${table}/api/door/sign-out`, { method: "POST", headers: { ...session, ...OWN } });
    expect([out.status, cookieOf(out)]).toEqual([204, expect.stringMatching(/^partsproof=; .*Max-Age=0/)]);
    expect((await wire(`${table}/api/households`, { headers: session })).status).toBe(401);
  });

  it("D5 wrong passphrases are held back on the network and never on this machine", async () => {
    const tried = [];
    for (let i = 0; i < 7; i += 1) tried.push((await signIn(table, "not the passphrase")).status);
    expect(tried.slice(0, 4)).toEqual([403, 403, 403, 403]);
    expect(tried.at(-1)).toBe(429);
    const held = await signIn(table);
    expect([held.status, Number(held.headers["retry-after"]) >= 1]).toEqual([429, true]);
    expect((await wire(`${here}/api/households`)).status).toBe(200);
    expect((await signIn(here)).status).toBe(204);
  });

  it("D9 the trail holds what was done, and neither it nor the log a passphrase", async () => {
    const { body } = await wire(`${here}/api/door/trail`);
    expect(body).toContain('"signed in"');
    expect(body).toContain(`"address":"${address}"`);
    expect(body + server.printed()).not.toMatch(/four dry casks|not the passphrase/);
  });
});

describe("a stream of events", () => {
  it("L5 ends when its reader goes away, so that nothing is kept for nobody", async () => {
    const gone = Promise.withResolvers<void>();
    const house = async (): Promise<Response> => {
      const body = new ReadableStream<Uint8Array>({
        start: (out) => out.enqueue(new TextEncoder().encode("data: {}\n\n")),
        cancel: () => gone.resolve(),
      });
      return new Response(body, { headers: { "content-type": "text/event-stream" } });
    };
    const app = createServerApp({ house, webFolder: "/none", network: false, origin: null, tls: false });
    const server = createAdaptorServer({ fetch: app.fetch });
    await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
    try {
      const { port } = server.address() as AddressInfo;
      const aborting = new AbortController();
      const answer = await fetch(`http://127.0.0.1:${port}/api/live`, { signal: aborting.signal });
      expect((await answer.body?.getReader().read())?.done).toBe(false);
      aborting.abort();
      await gone.promise;
    } finally {
      await new Promise<void>((resolve) => server.close(() => resolve()));
    }
  });
});

describe("the server behind HTTPS", () => {
  const address = networkAddress();
  let folder: string;
  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), "partsproof-https-"));
    await setPassphrase(folder);
  }, 60_000);
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  it("D4 with a certificate of its own the cookie is Secure and bound to the site", async () => {
    const { cert, key } = selfSigned(folder, [address, "127.0.0.1"]);
    const env = { PARTSPROOF_DATA: folder, HOST: "0.0.0.0" };
    const server = await spawnServer({ ...env, PARTSPROOF_TLS_CERT: cert, PARTSPROOF_TLS_KEY: key });
    try {
      expect(server.address).toMatch(/^https:\/\/127\.0\.0\.1:/);
      const ca = readFileSync(cert, "utf8");
      const table = `https://${address}:${new URL(server.address).port}`;
      const signed = await signIn(table, PASSPHRASE, {
        method: "POST",
        body: { passphrase: PASSPHRASE },
        ca,
      });
      expect(cookieOf(signed)).toMatch(/^__Host-partsproof=[0-9a-f]{64}; Path=\/; .*; Secure$/);
      const session = { cookie: cookieOf(signed).split(";")[0] ?? "" };
      const add = (origin: string) =>
        wire(`${table}/api/households`, {
          method: "POST",
          body: { name: "N" },
          headers: { ...session, ...OWN, origin },
          ca,
        });
      expect((await add(table)).status).toBe(201);
      // On default ports both have the same Host: a page of plain HTTP is another one's all the same.
      expect(codesOf(await add(table.replace("https:", "http:")))).toEqual(["origin_not_own"]);
      const { headers } = await wire(`${table}/api/door`, { ca });
      expect(headers["cross-origin-opener-policy"]).toBe("same-origin");
      expect((await wire(`${server.address}/api/households`, { ca })).status).toBe(200);
    } finally {
      await server.end("SIGTERM");
    }
  });

  it("D1 behind a proxy nobody is taken for this machine, and its address is the one that counts", async () => {
    const origin = "https://table.home.arpa";
    const server = await spawnServer({ PARTSPROOF_DATA: folder, PARTSPROOF_ORIGIN: origin });
    try {
      expect(server.printed()).toContain(`At the table: ${origin}`);
      // nginx without settings passes the upstream's own name on, as if it were this machine.
      expect((await wire(`${server.address}/api/households`)).status).toBe(401);
      const through = { host: "table.home.arpa", "x-forwarded-for": "192.0.2.50" };
      const signed = await signIn(server.address, PASSPHRASE, {
        method: "POST",
        body: { passphrase: PASSPHRASE },
        headers: { ...through, origin },
      });
      expect(cookieOf(signed)).toMatch(/^__Host-partsproof=.*; Secure$/);
      const session = { cookie: cookieOf(signed).split(";")[0] ?? "" };
      const trail = await wire(`${server.address}/api/door/trail`, { headers: { ...through, ...session } });
      expect(trail.body).toContain('"address":"192.0.2.50"');
      const foreign = await signIn(server.address, PASSPHRASE, {
        method: "POST",
        body: { passphrase: PASSPHRASE },
        headers: { ...through, origin: "https://other.home.arpa" },
      });
      expect(codesOf(foreign)).toEqual(["origin_not_own"]);
    } finally {
      await server.end("SIGTERM");
    }
  });

  it("D7 whoever goes past the proxy is counted by their own address, whatever they say was passed on", async () => {
    const env = { PARTSPROOF_DATA: folder, PARTSPROOF_ORIGIN: "https://table.home.arpa", HOST: "0.0.0.0" };
    const server = await spawnServer(env);
    try {
      const past = `http://${address}:${new URL(server.address).port}`;
      const statuses = [];
      for (let i = 0; i < 6; i += 1) {
        const headers = { host: "table.home.arpa", "x-forwarded-for": `192.0.2.${i + 1}` };
        const how = { method: "POST", body: { passphrase: "not the passphrase" }, headers };
        statuses.push((await signIn(past, "", how)).status);
      }
      expect(statuses).toEqual([403, 403, 403, 403, 429, 429]);
    } finally {
      await server.end("SIGTERM");
    }
  });
});
