import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { createClient } from "@partsproof/house/protocol";
import { eachDatabase, type SpawnedServer, spawnServer, temporaryDatabase } from "@partsproof/testkit";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openStreams } from "./fixtures/load/streams.ts";
import { layTables, type Seat } from "./fixtures/load/tables.ts";
import { writeNotes } from "./fixtures/load/writers.ts";
import { networkAddress } from "./fixtures/table/network-address.ts";
import { setPassphrase } from "./fixtures/table/own-house.ts";

const LONG = process.env["PARTSPROOF_LONG"] === "1";
/**
 * Issue 5 names the full size and 50 ms, which both databases must keep on a machine that does nothing else. The small
 * size runs with every change beside all other tests, so it waits longer.
 */
const SIZE = LONG
  ? {
      flights: 25,
      tasters: 8,
      everyMs: 2000,
      forMs: 60_000,
      streams: 200,
      idle: 2000,
      p99Ms: { sqlite: 50, postgresql: 50 },
    }
  : {
      flights: 3,
      tasters: 4,
      everyMs: 1000,
      forMs: 5000,
      streams: 12,
      idle: 100,
      p99Ms: { sqlite: 1000, postgresql: 2000 },
    };
const MOST_MB = 400;

const percentile = (sorted: readonly number[], p: number): number =>
  sorted[Math.min(sorted.length - 1, Math.ceil(p * sorted.length) - 1)] ?? Number.NaN;

/** Resident memory of a process in MB (10^6 bytes), as Linux counts it. */
function residentMb(pid: number): number {
  const kibibytes = /^VmRSS:\s+(\d+) kB$/m.exec(readFileSync(`/proc/${pid}/status`, "utf8"))?.[1];
  return (Number(kibibytes) * 1024) / 1e6;
}

eachDatabase((database) => {
  describe(`load on ${database}: ${SIZE.flights * SIZE.tasters} tasters in ${SIZE.flights} flights`, () => {
    let folder: string;
    let server: SpawnedServer;
    let table: string;
    let seats: readonly Seat[];
    let discard = async (): Promise<void> => undefined;

    beforeAll(async () => {
      folder = mkdtempSync(join(tmpdir(), "partsproof-load-"));
      const env: Record<string, string> = { PARTSPROOF_DATA: folder, HOST: "0.0.0.0" };
      if (database === "postgresql") {
        const temporary = await temporaryDatabase(database);
        env["DATABASE_URL"] = temporary.place;
        discard = () => temporary.remove();
      }
      await setPassphrase(folder, undefined, env);
      server = await spawnServer(env);
      table = `http://${networkAddress()}:${new URL(server.address).port}`;
      seats = await layTables(server.address, SIZE);
    }, 300_000);
    afterAll(async () => {
      await server.end("SIGTERM");
      await discard();
      rmSync(folder, { recursive: true, force: true });
    });

    it(`a note every ${SIZE.everyMs / 1000} s for ${SIZE.forMs / 1000} s, ${SIZE.streams} streams open: every note is kept in time`, {
      timeout: SIZE.forMs + 240_000,
    }, async () => {
      const streams = await openStreams(table, seats, SIZE.streams);
      const { ms, errors, last, sent } = await writeNotes(table, seats, SIZE);
      const sorted = ms.toSorted((a, b) => a - b);
      const [p50, p99, most] = [
        percentile(sorted, 0.5),
        percentile(sorted, 0.99),
        sorted.at(-1) ?? Number.NaN,
      ];

      const client = createClient(fetch, server.address);
      const missing: string[] = [];
      let entries = 0;
      for (const seat of seats) {
        const at = { household: seat.household, flight: seat.flight, sheet: seat.sheet };
        const { notes } = await client("getSheet", { at, token: seat.token });
        if (notes[0]?.first.nose !== last.get(seat)) missing.push(seat.sheet);
        entries += (await client("listEntries", { at, token: seat.token })).items.length;
      }
      const ended = streams.ended();
      streams.close();
      console.log(
        `LONG load on ${database} | ${seats.length} tasters, ${SIZE.flights} flights, ${SIZE.streams} streams, ${sent} notes | ` +
          `${errors.length} errors, ${entries} of ${sent} kept; p50 ${p50.toFixed(1)}, p99 ${p99.toFixed(1)}, most ${most.toFixed(1)} ms`,
      );
      expect(errors).toEqual([]);
      expect(sent).toBe(Math.round((SIZE.forMs / SIZE.everyMs) * seats.length));
      expect(missing).toEqual([]);
      expect(entries).toBe(sent);
      expect(ended).toBe(0);
      expect(p99).toBeLessThanOrEqual(SIZE.p99Ms[database]);
    });

    it(`${SIZE.idle} idle streams are held in ${MOST_MB} MB`, { timeout: 240_000 }, async () => {
      const before = residentMb(server.process.pid ?? 0);
      const streams = await openStreams(table, seats, SIZE.idle);
      // Two beats, so that what a beat costs is counted too.
      await new Promise((resolve) => setTimeout(resolve, LONG ? 32_000 : 500));
      const held = residentMb(server.process.pid ?? 0);
      console.log(
        `LONG load on ${database} | ${SIZE.idle} idle streams | ${held.toFixed(0)} MB resident, ${before.toFixed(0)} MB before; ${streams.ended()} ended`,
      );
      expect(streams.ended()).toBe(0);
      streams.close();
      expect(held).toBeLessThanOrEqual(MOST_MB);
    });
  });
});
