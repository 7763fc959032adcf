import type { GuestRole } from "../../protocol/index.ts";
import { changed } from "./flight-rows.ts";
import { hashToken } from "../ids.ts";
import type { House, Reads, Records } from "../ports.ts";
import type { FlightRow, GuestRow, JoiningRow } from "../rows.ts";
import { needToken, sameHash } from "./tokens.ts";

export interface AtFlight {
  readonly role: GuestRole;
  readonly sheetId: string | null;
}

/** Guests of a flight whose tokens are not revoked. */
export const guestsOf = (records: Records, flight: FlightRow): Promise<readonly GuestRow[]> =>
  records.list("guest", flight.householdId, { where: { flightId: flight.id, revokedAt: null } });

/** What tells whose a token is at a flight; all that an open stream keeps of it. */
export type Doors = Pick<FlightRow, "id" | "householdId" | "hostTokenHash" | "pourerTokenHash">;

/** J7: whom a token makes of its holder at this flight; null for a token that is none of its. */
export async function roleAt(records: Reads, flight: Doors, token: string): Promise<AtFlight | null> {
  const tokenHash = await hashToken(token);
  const where = { flightId: flight.id, tokenHash };
  const [sheet] = await records.list("sheet", flight.householdId, { where });
  if (sheet) return { role: "taster", sheetId: sheet.id };
  if (sameHash(tokenHash, flight.hostTokenHash)) return { role: "host", sheetId: null };
  const pourer = flight.pourerTokenHash;
  if (pourer !== null && sameHash(tokenHash, pourer)) return { role: "pourer", sheetId: null };
  const [guest] = await records.list("guest", flight.householdId, { where: { ...where, revokedAt: null } });
  // A taster's token is their sheet's, and dead where it is not.
  return guest && guest.role !== "taster" ? { role: guest.role as GuestRole, sheetId: null } : null;
}

/** F3: the token given at the setting, or that of a guest who came in as the pourer. */
export async function needPourer(records: Records, flight: FlightRow, token: string | null): Promise<void> {
  if (token !== null && (await roleAt(records, flight, token))?.role === "pourer") return;
  await needToken(token, null);
}

/** The guests of a sheet are guests no more; their token is dead with the sheet's. */
export async function revokeGuestsOf(
  records: Records,
  house: Pick<House, "clock">,
  flight: FlightRow,
  sheetId: string,
): Promise<void> {
  const now = house.clock.now();
  for (const guest of await guestsOf(records, flight)) {
    if (guest.sheetId !== sheetId) continue;
    await records.replace("guest", changed(guest, now, { revokedAt: now.toISOString() }));
  }
}

/** J3: nobody comes in any more. */
export async function closeJoiningsOf(
  records: Records,
  house: Pick<House, "clock">,
  flight: FlightRow,
  which: (joining: JoiningRow) => boolean = () => true,
): Promise<void> {
  const now = house.clock.now();
  const open = await records.list("joining", flight.householdId, {
    where: { flightId: flight.id, closedAt: null },
  });
  for (const joining of open.filter(which)) {
    await records.replace("joining", changed(joining, now, { closedAt: now.toISOString() }));
  }
}
