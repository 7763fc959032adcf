import { setTimeout as wait } from "node:timers/promises";
import { type SpawnedServer, spawnServer } from "@partsproof/testkit";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";

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

let folder: string;
let server: SpawnedServer;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "partsproof-search-"));
  server = await spawnServer({ PARTSPROOF_DATA: folder, PORT: "0" });
}, 120_000);
afterAll(async () => {
  await server.end("SIGTERM");
  rmSync(folder, { recursive: true, force: true });
});

// The four are asked for a minute each: had one of them gone on, the last search would wait for it, past this test's end.
test("SF8 a real server answers others while it searches, and ends the search of a caller who hangs up", {
  timeout: 50_000,
}, async () => {
  const ask = (body: object, seconds: number, signal?: AbortSignal) =>
    fetch(new URL(`/api/search?seconds=${seconds}`, server.address), {
      method: "POST",
      headers: { "content-type": "application/json", "x-partsproof": "1" },
      body: JSON.stringify(body),
      ...(signal === undefined ? {} : { signal }),
    });
  // Every thread there can be is kept busy by callers who would wait a minute, and then hang up.
  const leaving = new AbortController();
  let answered = 0;
  const left = Promise.allSettled(
    Array.from({ length: 4 }, async () => {
      await ask(problem(200, 6, 30), 60, leaving.signal);
      answered += 1;
    }),
  );
  await wait(1500);
  expect((await fetch(new URL("/api/health", server.address))).status).toBe(200);
  expect(answered).toBe(0);
  leaving.abort();
  await left;
  const answer = await ask(problem(10, 2, 4), 30);
  expect(answer.status).toBe(200);
  expect(await answer.json()).toMatchObject({ provenOptimal: true, gap: 0 });
});
