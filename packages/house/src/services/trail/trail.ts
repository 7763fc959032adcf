import { DAY_MS } from "@partsproof/core/quantity";
import { bornOfHouse } from "../birth.ts";
import type { Caller, Handlers } from "../handler.ts";
import { pageOf } from "../pages.ts";
import type { House, Records } from "../ports.ts";
import type { TrailRow } from "../rows.ts";

/** Everything the trail tells of. A word of this list, ids and a network address are all that a line holds. */
export type Deed =
  | "passphrase set"
  | "signed in"
  | "sign-in refused"
  | "sign-ins held back"
  | "signed out"
  | "signed out everywhere"
  | "way in opened"
  | "way in closed"
  | "guest joined"
  | "join codes held back"
  | "guest revoked"
  | "sheet freed"
  | "flight revealed"
  | "flight closed"
  | "flight closed and revealed"
  | "flight called off"
  | "calendar link made"
  | "calendar link revoked";

interface About {
  readonly caller: Caller;
  readonly household?: string;
  readonly flight?: string;
}

/** D9: writes one line, in the transaction of what it tells. */
export async function trail(
  records: Records,
  house: Pick<House, "clock" | "random">,
  what: Deed,
  { caller, household, flight }: About,
): Promise<void> {
  await records.ofHouse.insert("trail", {
    ...bornOfHouse(house),
    what,
    address: caller.address,
    aboutHousehold: household ?? null,
    aboutFlight: flight ?? null,
  });
}

const KEPT_DAYS = 180;
const AT_ONCE = 200;

/** Takes away the oldest lines that are older than half a year. */
export async function forgetOldTrail(records: Records, house: Pick<House, "clock">): Promise<void> {
  const before = new Date(house.clock.now().getTime() - KEPT_DAYS * DAY_MS).toISOString();
  for (const row of await records.ofHouse.list("trail", { limit: AT_ONCE })) {
    if (row.createdAt < before) await records.ofHouse.remove("trail", row.id);
  }
}

const shown = ({ id, createdAt, what, address, aboutHousehold, aboutFlight }: TrailRow) => ({
  id,
  at: createdAt,
  what,
  address,
  householdId: aboutHousehold,
  flightId: aboutFlight,
});

export const trailHandlers: Handlers<"listTrail"> = {
  listTrail: ({ house, query }) =>
    house.store.transaction((records) =>
      pageOf(query, (q) => records.ofHouse.list("trail", { ...q, newestFirst: true }), shown),
    ),
};
