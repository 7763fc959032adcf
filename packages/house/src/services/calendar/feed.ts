import { writeCalendar } from "@partsproof/core/calendar";
import { sameHash } from "../flights/index.ts";
import type { Handlers } from "../handler.ts";
import { limitsOf } from "../limits/index.ts";
import type { Records } from "../ports.ts";
import { refuse } from "../refuse.ts";
import type { CalendarLinkRow } from "../rows.ts";
import { eventsOf } from "./events.ts";
import { linkHashOf } from "./links.ts";
import { readDated } from "./read-dated.ts";

/** C2: no name of the household stands in a feed. */
const NEUTRAL_NAME = "Parts & Proof";

export const feedHandlers: Handlers<"getFeed"> = {
  /** C3, C4: whoever has the link reads it; every link that opens nothing is answered alike. */
  getFeed: async ({ house, query, caller }) => {
    const now = house.clock.now();
    limitsOf(house).needJoinTry(caller, now.getTime(), "link");
    const hash = await linkHashOf(house, query.link);
    const found = await house.store.transaction(async (records) => {
      const link = await linkOf(records, hash);
      return link && { zone: link.zone, dated: await readDated(records, link.householdId, now) };
    }, "snapshot");
    if (found === null)
      refuse(404, {
        code: "calendar_link_unknown",
        path: ["link"],
        limit: "a calendar link that is open",
        received: "another one",
        message: "a calendar feed requires a link that is open, got another one",
      });
    const { zone, dated } = found;
    return writeCalendar({ name: NEUTRAL_NAME, zone, events: eventsOf(dated, zone, "neutral", now) });
  },
};

/** Every open link of the house is compared, in a time that does not depend on whether or how nearly one fits. */
async function linkOf(records: Records, hash: string): Promise<CalendarLinkRow | null> {
  let found: CalendarLinkRow | null = null;
  for (const { id } of await records.households())
    for (const link of await records.list("calendarLink", id, { where: { revokedAt: null } }))
      if (sameHash(hash, link.linkHash)) found = link;
  return found;
}
