import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { type DatabaseName, spawnServer, temporaryDatabase } from "@partsproof/testkit";
import { openStreams } from "../apps/server/src/fixtures/load/streams.ts";
import { layTables } from "../apps/server/src/fixtures/load/tables.ts";
import { writeNotes } from "../apps/server/src/fixtures/load/writers.ts";
import { networkAddress } from "../apps/server/src/fixtures/table/network-address.ts";
import { setPassphrase } from "../apps/server/src/fixtures/table/own-house.ts";
import { startPostgres } from "../tools/postgres.ts";
import { boundedTable, type Figure } from "./bounded-table.ts";

// A real server with 200 tasters at 25 tables who each write a note every two seconds, and what it holds of streams that only wait.

const long = process.env["PARTSPROOF_LONG"] === "1";
const TABLES = { flights: 25, tasters: 8 };
const PACE = { everyMs: 2000, forMs: long ? 60_000 : 15_000 };
const STREAMS = 200;
const P99_MS = 50;
const IDLE = 2000;
/** Two beats of a stream, so that what a beat costs is counted too. */
const BEATS_MS = 32_000;
const MOST_MB = 400;

const percentile = (sorted: readonly number[], p: number): number =>
  sorted[Math.min(sorted.length - 1, Math.ceil(p * sorted.length) - 1)] ?? Number.NaN;

/** Resident memory of a process in MB (10^6 bytes), as Linux counts it. */
function residentMb(pid: number): number {
  const kibibytes = /^VmRSS:\s+(\d+) kB$/m.exec(readFileSync(`/proc/${pid}/status`, "utf8"))?.[1];
  return (Number(kibibytes) * 1024) / 1e6;
}

async function loadOn(database: DatabaseName): Promise<readonly Figure[]> {
  const folder = mkdtempSync(join(tmpdir(), "partsproof-bench-"));
  const temporary = database === "postgresql" ? await temporaryDatabase(database) : null;
  const env: Record<string, string> = { PARTSPROOF_DATA: folder, HOST: "0.0.0.0" };
  if (temporary !== null) env["DATABASE_URL"] = temporary.place;
  await setPassphrase(folder, undefined, env);
  const server = await spawnServer(env);
  try {
    const table = `http://${networkAddress()}:${new URL(server.address).port}`;
    const seats = await layTables(server.address, TABLES);
    const watching = await openStreams(table, seats, STREAMS);
    const { ms, errors, sent } = await writeNotes(table, seats, PACE);
    watching.close();
    if (errors.length > 0) throw new Error(`${sent} notes require to be kept, got ${errors[0]}`);
    const sorted = ms.toSorted((a, b) => a - b);
    const [p50, p99] = [percentile(sorted, 0.5), percentile(sorted, 0.99)];
    const beside = `median ${p50.toFixed(1)}, most ${(sorted.at(-1) ?? Number.NaN).toFixed(0)} ms of ${sent}`;
    const kept: Figure = {
      name: `${database}: a note kept, 99th percentile`,
      value: p99,
      unit: "ms",
      most: P99_MS,
      beside,
    };
    if (!long) return [kept];
    const before = residentMb(server.process.pid ?? 0);
    const idle = await openStreams(table, seats, IDLE);
    await wait(BEATS_MS);
    const held = residentMb(server.process.pid ?? 0);
    idle.close();
    const name = `${database}: resident with ${IDLE} idle streams`;
    return [
      kept,
      { name, value: held, unit: "MB", most: MOST_MB, beside: `${before.toFixed(0)} MB without` },
    ];
  } finally {
    await server.end("SIGTERM");
    await temporary?.remove();
    rmSync(folder, { recursive: true, force: true });
  }
}

/** How many bounds were missed. PostgreSQL, and memory, where the benchmarks are to be long. */
export async function benchLoad(): Promise<number> {
  const figures = [...(await loadOn("sqlite"))];
  if (long) {
    const postgres = await startPostgres();
    process.env["TEST_DATABASE_URL"] = postgres.url;
    figures.push(...(await loadOn("postgresql")));
    await postgres.stop();
  }
  const { flights, tasters } = TABLES;
  return boundedTable(
    `${flights * tasters} tasters, ${STREAMS} streams, a note each every ${PACE.everyMs / 1000} s`,
    figures,
  );
}
