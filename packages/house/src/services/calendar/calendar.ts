import { writeCalendar } from "@partsproof/core/calendar";
import type { Handlers } from "../handler.ts";
import { knownHousehold } from "../known.ts";
import { eventsOf } from "./events.ts";
import { readDated } from "./read-dated.ts";

export const calendarHandlers: Handlers<"getCalendar"> = {
  /** C1: for the household itself, by its own names. */
  getCalendar: async ({ house, at, query: { zone } }) => {
    const now = house.clock.now();
    const { name, dated } = await house.store.transaction(async (records) => ({
      name: (await knownHousehold(records, at.household)).name,
      dated: await readDated(records, at.household, now),
    }));
    const events = eventsOf(dated, zone, "named", now);
    return { text: writeCalendar({ name, zone, events }), events: events.length, zone };
  },
};
