import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { createClient } from "@partsproof/house/protocol";
import { eachDatabase, seededRandom, spawnServer, temporaryDatabase } from "@partsproof/testkit";
import SqliteFile from "better-sqlite3";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { beginEvening, type Evening } from "./fixtures/kill/evening.ts";
import { Journal } from "./fixtures/kill/journal.ts";
import { findLosses } from "./fixtures/kill/losses.ts";
import { writeUntilGone } from "./fixtures/kill/writers.ts";

const LONG = process.env["PARTSPROOF_LONG"] === "1";
/** PostgreSQL is a process of its own that is not killed, so it has less to prove. */
const ROUNDS = { sqlite: LONG ? 300 : 30, postgresql: LONG ? 50 : 5 };
/** A ledger is folded for every pour, so a household that went on for 300 rounds would slow the writers down. */
const ROUNDS_AN_EVENING = 10;
const SEED = 2026;

interface Played {
  readonly evening: Evening;
  readonly journal: Journal;
}

eachDatabase((database) => {
  const rounds = ROUNDS[database];

  describe(`kill -9 of the server in the middle of writing, on ${database}`, () => {
    let folder: string;
    let env: Record<string, string>;
    let discard = async (): Promise<void> => undefined;

    beforeAll(async () => {
      folder = mkdtempSync(join(tmpdir(), "partsproof-kill-"));
      env = { PARTSPROOF_DATA: join(folder, "data"), NODE_COMPILE_CACHE: join(folder, "compiled") };
      if (database === "postgresql") {
        const temporary = await temporaryDatabase(database);
        env["DATABASE_URL"] = temporary.place;
        discard = () => temporary.remove();
      }
      // Node writes its cache of compiled code when it ends well, and reads it at every start after that.
      await (await spawnServer(env)).end("SIGTERM");
    }, 120_000);
    afterAll(async () => {
      await discard();
      rmSync(folder, { recursive: true, force: true });
    });

    it(`loses no acknowledged write and leaves nothing half written, ${rounds} times`, {
      timeout: rounds * 15_000,
    }, async () => {
      const random = seededRandom(SEED);
      const played: Played[] = [];
      let current: Played | undefined;
      const lost: string[] = [];
      const broken: string[] = [];
      let cutOff = 0;
      const look = async (address: string, { evening, journal }: Played, when: string): Promise<void> => {
        const found = await findLosses(createClient(fetch, address), evening, journal);
        lost.push(...found.lost.map((text) => `${when}: ${text}`));
        broken.push(...found.broken.map((text) => `${when}: ${text}`));
      };

      for (let round = 0; round < rounds; round++) {
        const server = await spawnServer(env);
        const client = createClient(fetch, server.address);
        if (current) await look(server.address, current, `round ${round}`);
        if (!current || round % ROUNDS_AN_EVENING === 0) {
          current = { evening: await beginEvening(client), journal: new Journal() };
          played.push(current);
        }
        const { evening, journal } = current;

        const gone = { killed: false };
        const answered = new Promise<void>((resolve) => {
          journal.onSheet = resolve;
        });
        const writing = writeUntilGone(client, evening, journal, round, gone).catch((error: unknown) => {
          throw new Error(`a writer failed; the server printed:\n${server.printed()}`, { cause: error });
        });
        const [high = 0, low = 0] = random.bytes(2);
        const ms = 50 + ((high * 256 + low) % 351);
        // Counted from the first edit of a sheet that was answered: a new process is slow to begin with.
        const over = answered.then(() => new Promise<void>((resolve) => setTimeout(resolve, ms)));
        await Promise.race([writing, over]);
        gone.killed = true;
        expect((await server.end("SIGKILL")).signal).toBe("SIGKILL");
        await writing;
        cutOff += journal.unanswered.size + journal.unansweredCounts.size;
      }

      const server = await spawnServer(env);
      for (const evening of played) await look(server.address, evening, "at the end");
      expect((await server.end("SIGTERM")).code).toBe(0);

      const sum = (of: (journal: Journal) => number): number =>
        played.reduce((all, { journal }) => all + of(journal), 0);
      const acknowledged = sum((journal) => journal.acknowledged);
      const onSheets = sum((journal) => journal.acknowledgedCounts);
      console.log(
        `LONG kill -9 on ${database} | ${rounds} rounds | ${acknowledged} acknowledged writes ` +
          `(${onSheets} on sheets), ${lost.length} lost; ${cutOff} cut off, ${broken.length} half written`,
      );
      expect(lost).toStrictEqual([]);
      expect(broken).toStrictEqual([]);
      // The test would prove nothing if nothing had been answered, or no write had been cut off.
      expect(acknowledged).toBeGreaterThan(rounds);
      expect(onSheets).toBeGreaterThanOrEqual(rounds);
      expect(cutOff).toBeGreaterThan(rounds);
    });

    if (database !== "sqlite") return;
    it("leaves a file that SQLite itself finds sound", () => {
      const file = new SqliteFile(join(folder, "data", "house.db"), { readonly: true });
      expect(file.pragma("integrity_check", { simple: true })).toBe("ok");
      expect(file.pragma("foreign_key_check")).toStrictEqual([]);
      file.close();
    });
  });
});
