import { setTimeout as wait } from "node:timers/promises";
import { openHouse } from "@partsproof/house";
import { createClient, follow } from "@partsproof/house/protocol";
import { openDatabase, sha256, temporaryDatabase } from "@partsproof/testkit";
import { boundedTable } from "./bounded-table.ts";
import { middle } from "./middle.ts";

// How late a stream tells what another process on the same database wrote: two houses on one SQLite file.

const MEDIAN_MS = 500;
const MOST_MS = 1000;
const SEATS = 12;

const open = async (place: string) => {
  const { store } = await openDatabase(place);
  return openHouse({
    store,
    clock: { now: () => new Date() },
    random: { bytes: (count) => crypto.getRandomValues(new Uint8Array(count)) },
    sealKey: new Uint8Array(32),
    sha256,
  });
};

/** How many bounds were missed. */
export async function benchToldElsewhere(): Promise<number> {
  const place = await temporaryDatabase("sqlite");
  const [mine, other] = [await open(place.place), await open(place.place)];
  const leaving = new AbortController();
  try {
    const elsewhere = createClient(other.fetch, "http://house.bench");
    const { id: household } = await elsewhere("addHousehold", { body: { name: "Saltreach" } });
    const strength = { basis: "abv20" as const, value: 46 };
    const { id: whiskeyId } = await elsewhere("addWhiskey", {
      at: { household },
      body: { maker: "Saltreach", name: "Tide No. 1", strength, bottleMl: 5000 },
    });
    const { id: vesselId } = await elsewhere("addBottle", { at: { household }, body: { whiskeyId } });
    const { flight } = await elsewhere("addFlight", {
      at: { household },
      body: {
        name: "Tuesday",
        pouring: "someone else",
        pourer: "Pat",
        pourMl: 5,
        glasses: [{ vesselId }, { vesselId }],
        tasterIds: [],
        seats: SEATS,
      },
    });
    const at = { household, flight: flight.id };
    const messages = follow(mine.fetch, "http://house.bench", { at, signal: leaving.signal });
    const told = messages[Symbol.asyncIterator]();
    await told.next();
    const late: number[] = [];
    for (const [n, { sheetId }] of flight.sheets.entries()) {
      // At another moment between two askings each time.
      await wait(n * 47);
      await elsewhere("takeSheet", { at: { ...at, sheet: sheetId }, body: { ofLegalAge: true } });
      const written = performance.now();
      await told.next();
      late.push(performance.now() - written);
    }
    return boundedTable(`told of ${SEATS} things written elsewhere`, [
      { name: "median", value: middle(late), unit: "ms", most: MEDIAN_MS, beside: "asked every 500 ms" },
      { name: "the latest", value: Math.max(...late), unit: "ms", most: MOST_MS },
    ]);
  } finally {
    leaving.abort();
    await mine.close();
    await other.close();
    await place.remove();
  }
}
