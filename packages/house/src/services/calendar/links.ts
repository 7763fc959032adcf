import type { CalendarLink } from "../../protocol/index.ts";
import { born, edited } from "../birth.ts";
import type { Handlers } from "../handler.ts";
import { newToken } from "../ids.ts";
import { keyedHash } from "../keyed-hash.ts";
import { knownHousehold } from "../known.ts";
import type { House } from "../ports.ts";
import { refuse, unknownId } from "../refuse.ts";
import type { CalendarLinkRow } from "../rows.ts";
import { trail } from "../trail/index.ts";

/** Open at once: one for each phone and shared calendar is plenty, and each is compared with whatever is asked for. */
const MOST_OPEN = 20;

export const linkHashOf = (house: Pick<House, "sealKey">, link: string): Promise<string> =>
  keyedHash(house, "calendar link", link);

const shown = ({ id, label, zone, createdAt, revokedAt }: CalendarLinkRow): CalendarLink => ({
  id,
  label,
  zone,
  createdAt,
  revokedAt,
});

export const linkHandlers: Handlers<"addCalendarLink" | "listCalendarLinks" | "revokeCalendarLink"> = {
  /** C3: told this once. */
  addCalendarLink: async ({ house, at, body, caller }) => {
    const link = newToken(house);
    const linkHash = await linkHashOf(house, link);
    return house.store.transaction(async (records) => {
      await knownHousehold(records, at.household);
      const open = await records.list("calendarLink", at.household, { where: { revokedAt: null } });
      if (open.length >= MOST_OPEN)
        refuse(409, {
          code: "too_many_links",
          path: [],
          limit: `at most ${MOST_OPEN} open links`,
          received: open.length + 1,
          message: `a calendar requires at most ${MOST_OPEN} open links, got one more: revoke one`,
        });
      const row: CalendarLinkRow = { ...born(house, at.household), ...body, linkHash, revokedAt: null };
      await records.insert("calendarLink", row);
      await trail(records, house, "calendar link made", { caller, household: at.household });
      return { ...shown(row), path: `/api/feed?link=${link}` };
    });
  },

  listCalendarLinks: ({ house, at }) =>
    house.store.transaction(async (records) => {
      await knownHousehold(records, at.household);
      return { items: (await records.list("calendarLink", at.household)).map(shown).toReversed() };
    }),

  revokeCalendarLink: ({ house, at, caller }) =>
    house.store.transaction(async (records) => {
      const id = at["link"] ?? "";
      const old = (await records.find("calendarLink", at.household, id)) ?? unknownId("link", id, ["link"]);
      if (old.revokedAt !== null) return shown(old);
      const head = edited(house, "calendar link", old, old.version);
      const row = { ...head, revokedAt: head.updatedAt };
      await records.replace("calendarLink", row);
      await trail(records, house, "calendar link revoked", { caller, household: at.household });
      return shown(row);
    }),
};
