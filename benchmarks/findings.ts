import { mkdtempSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { openHouse } from "@partsproof/house";
import { createClient } from "@partsproof/house/protocol";
import { openDatabase, sha256 } from "@partsproof/server";
import { made, manySheets } from "./many-sheets.ts";
import { middle } from "./middle.ts";

/** A page that was asked for before, or rests on what was, is there at once. */
const WARM_MS = 200;

const PAGES = [
  "getWeighedFlight",
  "getRecipeFinding",
  "getWhiskeyFinding",
  "getTasterFinding",
  "getLeague",
] as const;

/**
 * Milliseconds a finding page takes in a household of 2,000 sheets, in a real SQLite file, through the house's own door: the first
 * time after the house was opened (every flight read, every sum made), and again (read again, sums kept).
 *
 * @returns how many pages missed the bound
 */
export async function benchFindings(): Promise<number> {
  const folder = mkdtempSync(join(tmpdir(), "partsproof-bench-"));
  const file = join(folder, "house.sqlite");
  try {
    const { store } = await openDatabase(file);
    await manySheets(store);
    console.log(
      `\n${made.sheets} sheets of 400 flights in an SQLite file of ${(statSync(file).size / 2 ** 20).toFixed(1)} MiB`,
    );
    console.log("| finding page | first after opening, ms | sums kept, ms (median of 5) | bound of kept | |");
    console.log("| --- | ---: | ---: | --- | --- |");
    let missed = 0;
    for (const name of PAGES) {
      // A house of its own keeps nothing of the page before.
      const house = openHouse({
        store,
        clock: { now: () => new Date() },
        random: { bytes: (count) => crypto.getRandomValues(new Uint8Array(count)) },
        sealKey: new Uint8Array(32),
        sha256,
      });
      const client = createClient(house.fetch, "http://house.bench");
      const { household, flight, recipe, whiskey, taster } = made;
      const page = async (): Promise<number> => {
        const from = performance.now();
        await client(name, { at: { household, flight, recipe, whiskey, taster } });
        return performance.now() - from;
      };
      const first = await page();
      const again = [];
      for (let i = 0; i < 5; i += 1) again.push(await page());
      const median = middle(again);
      const kept = median <= WARM_MS;
      if (!kept) missed += 1;
      console.log(
        `| ${name} | ${first.toFixed(0)} | ${median.toFixed(0)} | <= ${WARM_MS} | ${kept ? "kept" : "MISSED"} |`,
      );
    }
    await store.close();
    return missed;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
