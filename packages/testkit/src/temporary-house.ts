import { openHouse } from "@partsproof/house";
import { type Client, createClient, type Door } from "@partsproof/house/protocol";
import type { House, Random, Store } from "@partsproof/house/services";
import { openDatabase } from "@partsproof/server";
import type { DatabaseName } from "./databases.ts";
import { seededRandom } from "./seeded-random.ts";
import { type SettableClock, settableClock } from "./settable-clock.ts";
import { borrowDatabase } from "./borrowed-database.ts";

export interface TemporaryHouseOptions {
  /** Where the clock stands, ISO 8601. */
  readonly now?: string;
  readonly seed?: number;
}

export interface TemporaryHouse {
  readonly fetch: Door;
  readonly client: Client;
  /** What services are given, for tests that go below the door. */
  readonly house: House;
  readonly store: Store;
  readonly clock: SettableClock;
  readonly random: Random;
  /** Closes it and removes its database. */
  close(): Promise<void>;
  [Symbol.asyncDispose](): Promise<void>;
}

/** A house of its own on a real, empty database, with a clock that only moves when told and chance that repeats. */
export async function temporaryHouse(
  database: DatabaseName,
  { now, seed = 1 }: TemporaryHouseOptions = {},
): Promise<TemporaryHouse> {
  const temporary = await borrowDatabase(database);
  const { store } = await openDatabase(temporary.place);
  const clock = settableClock(now);
  const random = seededRandom(seed);
  const house: House = { store, clock, random, sealKey: random.bytes(32) };
  const opened = openHouse(house);
  const close = async (): Promise<void> => {
    await opened.close();
    await temporary.remove();
  };
  return {
    fetch: opened.fetch,
    client: createClient(opened.fetch, "http://house.test"),
    house,
    store,
    clock,
    random,
    close,
    [Symbol.asyncDispose]: close,
  };
}
