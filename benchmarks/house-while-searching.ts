import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { spawnServer } from "@partsproof/testkit";
import { boundedTable } from "./bounded-table.ts";
import { middle } from "./middle.ts";
import { wideSearch } from "./wide-search.ts";

// A real server as a process of its own: what others wait for while it searches for four, and how soon it has time again once they go.

const MOST_MS = 100;
/** A thread that was ended is begun anew. */
const AFTER_MS = 2000;
const CALLERS = 4;
const ASKS = 41;

/** How many bounds were missed. */
export async function benchHouseWhileSearching(): Promise<number> {
  const folder = mkdtempSync(join(tmpdir(), "partsproof-bench-"));
  const server = await spawnServer({ PARTSPROOF_DATA: folder });
  const search = (body: object, seconds: number, signal?: AbortSignal): Promise<Response> =>
    fetch(new URL(`/api/search?seconds=${seconds}`, server.address), {
      method: "POST",
      headers: { "content-type": "application/json", "x-partsproof": "1" },
      body: JSON.stringify(body),
      ...(signal === undefined ? {} : { signal }),
    });
  const health = async (): Promise<readonly number[]> => {
    const times: number[] = [];
    for (let n = 0; n < ASKS; n += 1) {
      const from = performance.now();
      await (await fetch(new URL("/api/health", server.address))).text();
      times.push(performance.now() - from);
      await wait(20);
    }
    return times;
  };
  try {
    const idle = await health();
    const leaving = new AbortController();
    const left = Promise.allSettled(
      Array.from({ length: CALLERS }, () => search(wideSearch(200), 60, leaving.signal)),
    );
    await wait(1500);
    const busy = await health();
    leaving.abort();
    await left;
    const from = performance.now();
    const answer = await search(wideSearch(10, { maxBottles: 2, maxParts: 4 }), 30);
    const { provenOptimal } = (await answer.json()) as { readonly provenOptimal: boolean };
    if (!provenOptimal) throw new Error(`a small search requires a proof, got status ${answer.status}`);
    const after = performance.now() - from;
    return boundedTable("a server that searches for four", [
      {
        name: `another answered, median of ${ASKS}`,
        value: middle(busy),
        unit: "ms",
        most: MOST_MS,
        beside: `${middle(idle).toFixed(1)} ms idle`,
      },
      {
        name: "another answered, the slowest",
        value: Math.max(...busy),
        unit: "ms",
        beside: `${Math.max(...idle).toFixed(1)} ms idle`,
      },
      { name: "a small search answered once they left", value: after, unit: "ms", most: AFTER_MS },
    ]);
  } finally {
    await server.end("SIGTERM");
    rmSync(folder, { recursive: true, force: true });
  }
}
