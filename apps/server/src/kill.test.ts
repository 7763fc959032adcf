import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { createClient } from "@partsproof/house/protocol";
import { seededRandom } from "@partsproof/testkit";
import SqliteFile from "better-sqlite3";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { beginEvening, type Evening } from "./fixtures/evening.ts";
import { Journal } from "./fixtures/journal.ts";
import { findLosses } from "./fixtures/losses.ts";
import { spawnServer } from "./fixtures/spawned-server.ts";
import { writeUntilGone } from "./fixtures/writers.ts";

const ROUNDS = process.env["PARTSPROOF_LONG"] === "1" ? 300 : 30;
/** A ledger is folded for every pour, so a household that went on for 300 rounds would slow the writers down. */
const ROUNDS_AN_EVENING = 10;
const SEED = 2026;

describe("kill -9 of the server in the middle of writing", () => {
  let folder: string;
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), "partsproof-kill-"));
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  it(`loses no acknowledged write and leaves nothing half written, ${ROUNDS} times`, {
    timeout: ROUNDS * 15_000,
  }, async () => {
    const random = seededRandom(SEED);
    const evenings: { readonly evening: Evening; readonly journal: Journal }[] = [];
    const lost: string[] = [];
    const broken: string[] = [];
    let caught = 0;

    for (let round = 0; round < ROUNDS; round++) {
      const server = await spawnServer({ PARTSPROOF_DATA: folder });
      const client = createClient(fetch, server.address);
      const look = async ({ evening, journal }: (typeof evenings)[number]): Promise<void> => {
        const found = await findLosses(client, evening, journal);
        lost.push(...found.lost.map((text) => `round ${round}: ${text}`));
        broken.push(...found.broken.map((text) => `round ${round}: ${text}`));
      };
      const last = evenings.at(-1);
      if (last) await look(last);
      if (round % ROUNDS_AN_EVENING === 0) {
        evenings.push({ evening: await beginEvening(client), journal: new Journal() });
      }
      const { evening, journal } = evenings.at(-1) ?? expect.unreachable("an evening was begun");

      const gone = { killed: false };
      const writing = writeUntilGone(client, evening, journal, round, gone);
      const [high = 0, low = 0] = random.bytes(2);
      const ms = 50 + ((high * 256 + low) % 351);
      await Promise.race([writing, new Promise<void>((resolve) => setTimeout(resolve, ms))]);
      gone.killed = true;
      const { signal } = await server.end("SIGKILL");
      expect(signal).toBe("SIGKILL");
      await writing;
      caught += journal.unanswered.size + journal.unansweredCounts.size;
    }

    const server = await spawnServer({ PARTSPROOF_DATA: folder });
    const client = createClient(fetch, server.address);
    for (const { evening, journal } of evenings) {
      const found = await findLosses(client, evening, journal);
      lost.push(...found.lost);
      broken.push(...found.broken);
    }
    expect((await server.end("SIGTERM")).code).toBe(0);
    const file = new SqliteFile(join(folder, "house.db"), { readonly: true });
    expect(file.pragma("integrity_check", { simple: true })).toBe("ok");
    expect(file.pragma("foreign_key_check")).toStrictEqual([]);
    file.close();

    const acknowledged = evenings.reduce((sum, { journal }) => sum + journal.acknowledged, 0);
    console.log(
      `LONG kill -9 | ${ROUNDS} rounds | ${acknowledged} acknowledged writes, ${lost.length} lost; ` +
        `${caught} writes cut off, ${broken.length} half written`,
    );
    expect(lost).toStrictEqual([]);
    expect(broken).toStrictEqual([]);
    // The test would prove nothing if nothing had been answered, or no write had been cut off.
    expect(acknowledged).toBeGreaterThan(ROUNDS * 5);
    expect(caught).toBeGreaterThan(ROUNDS);
  });
});
