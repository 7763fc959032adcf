import { spawn } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { networkInterfaces, tmpdir } from "node:os";
import { join } from "node:path";
import { createClient } from "@partsproof/house/protocol";
import { type SpawnedServer, spawnServer } from "@partsproof/testkit";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { environment, issuesOf, main, type Ran } from "../../fixtures/cli.ts";
import { runProgram } from "../../program.ts";

const PASSPHRASE = "nine lanterns on the north quay";

function networkAddress(): string {
  const all = Object.values(networkInterfaces()).flatMap((list) => list ?? []);
  const found = all.find(({ family, internal }) => family === "IPv4" && !internal);
  if (found) return found.address;
  throw new Error("a house over the network requires a network address of this machine, got none");
}

describe("the owner at a house over the network", () => {
  let folder: string;
  let server: SpawnedServer;
  let house: string;

  /** The command line on another machine: its own data folder, and something typed. */
  const typed = (
    args: readonly string[],
    { program = process.execPath, before = [main], after = "", input = "" } = {},
  ): Promise<Ran> =>
    new Promise((resolve, reject) => {
      const env = environment({ PARTSPROOF_DATA: join(folder, "elsewhere") });
      const child = spawn(program, [...before, ...args], { env, stdio: ["pipe", "pipe", "pipe"] });
      const out = { stdout: "", stderr: "" };
      let said = after === "";
      const look = (): void => {
        if (said && input !== "") child.stdin.end(`${input}\n`);
      };
      child.stdout.setEncoding("utf8").on("data", (text: string) => {
        out.stdout += text;
        if (said || !out.stdout.includes(after)) return;
        said = true;
        look();
      });
      child.stderr.setEncoding("utf8").on("data", (text: string) => (out.stderr += text));
      child.on("error", reject);
      child.on("close", (code) => resolve({ code, ...out }));
      if (input === "") child.stdin.end();
      else look();
    });
  const kept = (): string => readFileSync(join(folder, "elsewhere", "sessions.json"), "utf8");
  /** In this process, where a new one would only cost time. */
  const asked = (): Promise<Ran> =>
    runProgram(
      ["household", "list", "--house", house, "--json"],
      environment({ PARTSPROOF_DATA: join(folder, "elsewhere") }),
    );

  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), "partsproof-cli-door-"));
    const env = { PARTSPROOF_DATA: join(folder, "house") };
    const alone = await spawnServer(env);
    const owner = createClient(fetch, alone.address);
    await owner("setPassphrase", { body: { passphrase: PASSPHRASE } });
    await owner("addHousehold", { body: { name: "North quay" } });
    await alone.end("SIGTERM");
    server = await spawnServer({ ...env, HOST: "0.0.0.0" });
    house = `http://${networkAddress()}:${new URL(server.address).port}`;
  }, 120_000);
  afterAll(async () => {
    await server.end("SIGTERM");
    rmSync(folder, { recursive: true, force: true });
  });

  it("is refused before signing in, and with another passphrase; nothing is kept of either", async () => {
    expect(issuesOf(await asked()).map(({ code }) => code)).toEqual(["sign_in_needed"]);
    const wrong = await typed(["door", "sign-in", "--house", house, "--json"], {
      input: "not that one at all",
    });
    expect([wrong.code, wrong.stdout]).toEqual([2, ""]);
    expect(issuesOf(wrong).map(({ code }) => code)).toEqual(["passphrase_wrong"]);
    expect(kept).toThrow(/ENOENT/);
    const none = await typed(["door", "sign-in", "--house", house]);
    expect([none.code, none.stderr]).toEqual([
      1,
      expect.stringContaining("requires a line on standard input"),
    ]);
  });

  it("signs in with a line of standard input; the session is a file that only this user may read", async () => {
    const signed = await typed(["door", "sign-in", "--house", house, "--json"], { input: PASSPHRASE });
    expect([signed.code, JSON.parse(signed.stdout)]).toEqual([0, { house, signedIn: true }]);
    expect(signed.stderr).toContain("Over plain HTTP");
    expect(statSync(join(folder, "elsewhere", "sessions.json")).mode & 0o777).toBe(0o600);
    expect(statSync(join(folder, "elsewhere")).mode & 0o777).toBe(0o700);
    expect(Object.keys(JSON.parse(kept()) as object)).toEqual([house]);
    expect(kept() + signed.stdout + signed.stderr).not.toContain(PASSPHRASE);
    const list = await asked();
    expect([list.code, JSON.parse(list.stdout)]).toMatchObject([0, { items: [{ name: "North quay" }] }]);
    const added = await typed(["household", "add", "South quay", "--house", house]);
    expect([added.code, added.stderr]).toEqual([0, ""]);
  });

  it("no other house is sent the session, nor one that sends its callers on", async () => {
    const seen: (string | undefined)[] = [];
    const other = createServer((request, answer) => {
      seen.push(request.headers.cookie);
      answer.writeHead(307, { location: `${house}${request.url ?? ""}` }).end();
    });
    await new Promise<void>((resolve) => other.listen(0, "127.0.0.1", resolve));
    try {
      const elsewhere = `http://127.0.0.1:${(other.address() as AddressInfo).port}`;
      const sent = await typed(["household", "list", "--house", elsewhere, "--json"]);
      expect([sent.code, issuesOf(sent).map(({ code }) => code)]).toEqual([1, ["house_unreachable"]]);
      expect(seen).toEqual([undefined]);
    } finally {
      await new Promise<void>((resolve) => other.close(() => resolve()));
    }
  });

  it("signs out: the house ends the session, and it is forgotten here", async () => {
    const session = kept();
    const out = await typed(["door", "sign-out", "--house", house]);
    expect([out.code, out.stdout]).toEqual([0, `Signed out of ${house}.\n`]);
    expect(JSON.parse(kept())).toEqual({});
    expect(issuesOf(await asked()).map(({ code }) => code)).toEqual(["sign_in_needed"]);
    const [{ cookie }] = Object.values(
      JSON.parse(session) as Record<string, { readonly cookie: string }>,
    ) as [{ readonly cookie: string }];
    expect((await fetch(`${house}/api/households`, { headers: { cookie } })).status).toBe(401);
  });

  it("at a terminal the passphrase is not shown; --everywhere ends it again", async () => {
    const line = [process.execPath, main, "door", "sign-in", "--house", house].join(" ");
    const signed = await typed(["-qec", line, "/dev/null"], {
      program: "script",
      before: [],
      after: "it is not shown",
      input: PASSPHRASE,
    });
    expect([signed.code, signed.stdout]).toEqual([0, expect.stringContaining(`Signed in to ${house}`)]);
    expect(signed.stdout).not.toContain("lanterns");
    expect((await asked()).code).toBe(0);
    expect((await typed(["door", "sign-out", "--everywhere", "--house", house])).code).toBe(0);
    expect(JSON.parse(kept())).toEqual({});
  });

  it("a file of sessions that is none is told, not passed over or written over", async () => {
    writeFileSync(join(folder, "elsewhere", "sessions.json"), "half a line");
    expect(issuesOf(await asked()).map(({ code }) => code)).toEqual(["sessions_unreadable"]);
    expect(kept()).toBe("half a line");
  });
});
