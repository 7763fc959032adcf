import { type CalendarEvent, writeCalendar } from "@partsproof/core/calendar";
import { batchNow, shelfState } from "../shelf/index.ts";
import { batchState, restDue } from "../batches/index.ts";
import type { Handlers } from "../handler.ts";
import { knownHousehold } from "../known.ts";
import type { BatchRow } from "../rows.ts";

/** The day of an instant on a zone's clock: "2031-05-04". */
const dayOn = (zone: string, at: Date): string =>
  new Intl.DateTimeFormat("sv-SE", { timeZone: zone, dateStyle: "short" }).format(at);

function restedEvent(batch: BatchRow, zone: string): CalendarEvent[] {
  const due = restDue(batch);
  if (due === null) return [];
  return [
    {
      uid: `batch-rested-${batch.id}@partsproof`,
      changedAt: new Date(batch.updatedAt),
      words: `${batch.name} has rested its ${batch.restDays === 1 ? "1 day" : `${batch.restDays} days`}`,
      on: { kind: "day", date: dayOn(zone, due) },
    },
  ];
}

export const calendarHandlers: Handlers<"getCalendar"> = {
  /** Every batch that rests or has rested and is not finished, on the day its rest ends. */
  getCalendar: ({ house, at, query: { zone } }) =>
    house.store.transaction(async (records) => {
      const { name } = await knownHousehold(records, at.household);
      const now = house.clock.now();
      const shelf = await shelfState(records, at.household);
      const events = [...shelf.batches.values()]
        .filter((batch) => batchState(batch, now) !== "finished" && batchNow(shelf, batch).size > 0)
        .flatMap((batch) => restedEvent(batch, zone));
      return { text: writeCalendar({ name, zone, events }), events: events.length, zone };
    }),
};
