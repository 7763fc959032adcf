import { setTimeout as wait } from "node:timers/promises";
import { spawnServer } from "@partsproof/testkit";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";

const attributes = Array.from({ length: 24 }, (_, a) => `a${a}`);
const problem = (n: number, maxBottles: number, maxParts: number) => ({
  whiskeys: Array.from({ length: n }, (_, at) => ({
    id: `w${at}`,
    abv: 40 + (at % 20),
    profile: Object.fromEntries(
      attributes.map((id, a) => [id, ((at * 37 + a * 101 + at * a * 13) % 100) / 10]),
    ),
  })),
  target: { profile: Object.fromEntries(attributes.map((id) => [id, 5])) },
  rules: { maxBottles, maxParts },
});

test("SF8 a real server answers others while it searches, and ends the search of a caller who hangs up", async () => {
  const folder = mkdtempSync(join(tmpdir(), "partsproof-search-"));
  const server = await spawnServer({ PARTSPROOF_DATA: folder, PORT: "0" });
  try {
    const ask = (body: object, seconds: number, signal?: AbortSignal) =>
      fetch(new URL(`/api/search?seconds=${seconds}`, server.address), {
        method: "POST",
        headers: { "content-type": "application/json", "x-partsproof": "1" },
        body: JSON.stringify(body),
        ...(signal === undefined ? {} : { signal }),
      });
    // Every thread there can be is kept busy by callers who would wait a minute, and then hang up.
    const leaving = new AbortController();
    const left = Promise.allSettled(
      Array.from({ length: 4 }, () => ask(problem(200, 6, 30), 60, leaving.signal)),
    );
    await wait(1500);
    const begun = performance.now();
    expect((await fetch(new URL("/api/health", server.address))).status).toBe(200);
    expect(performance.now() - begun).toBeLessThan(5000);
    leaving.abort();
    await left;
    const answer = await ask(problem(10, 2, 4), 30);
    expect(answer.status).toBe(200);
    expect(await answer.json()).toMatchObject({ provenOptimal: true, gap: 0 });
    // Had one of the four gone on, this would have waited for it.
    expect(performance.now() - begun).toBeLessThan(30_000);
  } finally {
    await server.end("SIGTERM");
    rmSync(folder, { recursive: true, force: true });
  }
});
