import { mkdtempSync, rmSync } from "node:fs";
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
const SIZE = LONG
  ? { flights: 25, tasters: 8, everyMs: 2000, forMs: 60_000, streams: 200, idle: 2000 }
  : { flights: 3, tasters: 4, everyMs: 1000, forMs: 5000, streams: 12, idle: 100 };

// How long a note takes and what streams hold of memory stands in the benchmarks, with its limits.
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

    it(`a note every ${SIZE.everyMs / 1000} s for ${SIZE.forMs / 1000} s, ${SIZE.streams} streams open: every note is kept`, {
      timeout: SIZE.forMs + 240_000,
    }, async () => {
      const streams = await openStreams(table, seats, SIZE.streams);
      const { errors, last, sent } = await writeNotes(table, seats, SIZE);
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
          `${errors.length} errors, ${entries} of ${sent} kept`,
      );
      expect(errors).toEqual([]);
      expect(sent).toBe(Math.round((SIZE.forMs / SIZE.everyMs) * seats.length));
      expect(missing).toEqual([]);
      expect(entries).toBe(sent);
      expect(ended).toBe(0);
    });

    it(`${SIZE.idle} idle streams are held`, { timeout: 240_000 }, async () => {
      const streams = await openStreams(table, seats, SIZE.idle);
      // Two beats of each.
      await new Promise((resolve) => setTimeout(resolve, LONG ? 32_000 : 500));
      const ended = streams.ended();
      streams.close();
      console.log(`LONG load on ${database} | ${SIZE.idle} idle streams | ${ended} ended`);
      expect(ended).toBe(0);
    });
  });
});
