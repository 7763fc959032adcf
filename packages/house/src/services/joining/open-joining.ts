import type { Guest, JoiningMade, Joinings } from "../../protocol/index.ts";
import type { z } from "zod";
import { born } from "../birth.ts";
import { changed, closeJoiningsOf, knownFlight, needState, needToken } from "../flights/index.ts";
import type { Handlers } from "../handler.ts";
import { newToken } from "../ids.ts";
import { happened } from "../live/index.ts";
import type { Records } from "../ports.ts";
import { refuse, unknownId } from "../refuse.ts";
import type { FlightRow, GuestRow } from "../rows.ts";
import { codeHash, linkHash, newCode, shownCode } from "./tickets.ts";
import { trail } from "../trail/index.ts";

const MINUTE_MS = 60_000;

const shownGuest = ({ id, role, name, sheetId, createdAt, revokedAt }: GuestRow): z.infer<typeof Guest> => ({
  id,
  role: role as z.infer<typeof Guest>["role"],
  name,
  sheetId,
  joinedAt: createdAt,
  revokedAt,
});

async function shownJoinings(records: Records, flight: FlightRow, now: Date): Promise<Joinings> {
  const where = { flightId: flight.id };
  const open = await records.list("joining", flight.householdId, { where: { ...where, closedAt: null } });
  const guests = await records.list("guest", flight.householdId, { where });
  return {
    open: open
      .filter(({ expiresAt }) => Date.parse(expiresAt) > now.getTime())
      .map(({ id, role, expiresAt }) => ({ id, role: role as JoiningMade["role"], expiresAt })),
    guests: guests.map(shownGuest),
  };
}

/** F4: nobody pours for one who is alone, and the one seat is the taster's own. */
function needRoom(flight: FlightRow, role: string): void {
  if (flight.pouring !== "alone" || role === "watcher") return;
  refuse(409, {
    code: "alone_needs_one",
    path: ["role"],
    limit: "watchers only when somebody pours alone",
    received: role,
    message: `a way in requires to be for watchers only when somebody pours alone, got one for a ${role}`,
  });
}

export const openJoiningHandlers: Handlers<"openJoining" | "listJoinings" | "closeJoining" | "revokeGuest"> =
  {
    /** J1. A way in that was open for this role is closed. */
    openJoining: async ({ house, at, body, token, caller }) => {
      const link = newToken(house);
      const code = body.role === "pourer" ? null : newCode(house);
      const hashes = {
        linkHash: await linkHash(house, link),
        codeHash: code === null ? null : await codeHash(house, code),
      };
      return house.store.transaction(async (records): Promise<JoiningMade> => {
        const flight = await knownFlight(records, at);
        await needToken(token, flight.hostTokenHash);
        if (flight.state !== "pouring") needState(flight, "opening a way in", "tasting");
        needRoom(flight, body.role);
        await closeJoiningsOf(records, house, flight, ({ role }) => role === body.role);
        const now = house.clock.now();
        const expiresAt = new Date(now.getTime() + body.minutes * MINUTE_MS).toISOString();
        const head = born(house, at.household);
        const row = {
          ...head,
          flightId: flight.id,
          role: body.role,
          ...hashes,
          expiresAt,
          closedAt: null,
        };
        await records.insert("joining", row);
        await trail(records, house, "way in opened", { caller, household: at.household, flight: flight.id });
        return { id: row.id, role: body.role, expiresAt, link, code: code === null ? null : shownCode(code) };
      });
    },

    listJoinings: ({ house, at, token }) =>
      house.store.transaction(async (records) => {
        const flight = await knownFlight(records, at);
        await needToken(token, flight.hostTokenHash);
        return shownJoinings(records, flight, house.clock.now());
      }),

    closeJoining: ({ house, at, token, caller }) =>
      house.store.transaction(async (records) => {
        const flight = await knownFlight(records, at);
        await needToken(token, flight.hostTokenHash);
        const id = at["joining"] ?? "";
        const joining = await records.find("joining", at.household, id);
        if (joining?.flightId !== flight.id) unknownId("joining", id, ["joining"]);
        await closeJoiningsOf(records, house, flight, (row) => row.id === id);
        await trail(records, house, "way in closed", { caller, household: at.household, flight: flight.id });
        return shownJoinings(records, flight, house.clock.now());
      }),

    /** J6: the token is dead at once; an open seat is free again, with what is written on it; a locked one stays. */
    revokeGuest: ({ house, at, token, caller }) =>
      house.store.transaction(async (records) => {
        const flight = await knownFlight(records, at);
        await needToken(token, flight.hostTokenHash);
        const id = at["guest"] ?? "";
        const guest = await records.find("guest", at.household, id);
        if (guest?.flightId !== flight.id) unknownId("guest", id, ["guest"]);
        const now = house.clock.now();
        if (guest.revokedAt === null) {
          await records.replace("guest", changed(guest, now, { revokedAt: now.toISOString() }));
          const sheet = guest.sheetId && (await records.find("sheet", at.household, guest.sheetId));
          if (sheet && sheet.tokenHash === guest.tokenHash) {
            const state = sheet.state === "open" ? "free" : sheet.state;
            await records.replace("sheet", changed(sheet, now, { state, tokenHash: null }));
          }
          await happened(
            records,
            house,
            flight,
            "seat freed",
            guest.sheetId ? { sheetId: guest.sheetId } : {},
          );
          await trail(records, house, "guest revoked", {
            caller,
            household: at.household,
            flight: flight.id,
          });
        }
        return shownJoinings(records, flight, now);
      }),
  };
