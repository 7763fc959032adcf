import { openHouse, type OpenHouse } from "@partsproof/house";
import { type Client, createClient } from "@partsproof/house/protocol";
import type { House, Random, Store } from "@partsproof/house/services";
import { createPassphrases, openDatabase, sha256 } from "@partsproof/server";
import type { DatabaseName } from "./databases.ts";
import { seededRandom } from "./seeded-random.ts";
import { type SettableClock, settableClock } from "./settable-clock.ts";
import { borrowDatabase } from "./borrowed-database.ts";

/** The same hash as the server's at a cost that a test can pay many times. */
const QUICK = { N: 2 ** 10, r: 8, p: 1 };

export interface TemporaryHouseOptions {
  /** Where the clock stands, ISO 8601. */
  readonly now?: string;
  readonly seed?: number;
}

export interface TemporaryHouse {
  /** Takes where a request comes from as well; left out, it is from this process. */
  readonly fetch: OpenHouse["fetch"];
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
  const house: House = {
    store,
    clock,
    random,
    sealKey: random.bytes(32),
    sha256,
    passphrases: createPassphrases(QUICK),
  };
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
