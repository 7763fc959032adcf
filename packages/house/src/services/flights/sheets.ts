import type { Sheet } from "../../protocol/index.ts";
import { changed, knownFlight, knownSheet, needState } from "./flight-rows.ts";
import type { Handlers } from "../handler.ts";
import { hashToken, newToken } from "../ids.ts";
import type { Records } from "../ports.ts";
import { HouseRefusal, refuse, staleEdit } from "../refuse.ts";
import type { FlightRow, SheetRow } from "../rows.ts";
import { writtenAfter } from "./sheet-edit.ts";
import { showFlight, shownSheet, tasterNames } from "./shown-flight.ts";
import { needToken } from "./tokens.ts";

const showSheet = async (records: Records, sheet: SheetRow, flight: FlightRow): Promise<Sheet> =>
  shownSheet(sheet, flight, await tasterNames(records, flight.householdId));

function refuseState(code: string, act: string, limit: string, sheet: SheetRow): never {
  const message = `${act} requires ${limit}, got one that is ${sheet.state}`;
  refuse(409, { code, path: ["sheet"], limit, received: sheet.state, message });
}

/** F8: its own token, a poured flight, an open sheet, and the version that was read. */
async function writable(flight: FlightRow, sheet: SheetRow, version: number, token: string | null) {
  await needToken(token, sheet.tokenHash);
  // A revealed flight has no open sheet, and that is the plainer answer.
  if (flight.state !== "revealed") needState(flight, "writing on a sheet", "tasting");
  if (sheet.state !== "open") refuseState("sheet_locked", "writing on a sheet", "an open sheet", sheet);
  if (sheet.version !== version) staleEdit("sheet", version, sheet.version);
}

async function keep(records: Records, sheet: SheetRow): Promise<void> {
  if (!(await records.replace("sheet", sheet))) staleEdit("sheet", sheet.version - 1, sheet.version);
}

export const sheetHandlers: Handlers<"takeSheet" | "freeSheet" | "getSheet" | "editSheet" | "lockSheet"> = {
  takeSheet: async ({ house, at }) => {
    const token = newToken(house);
    const tokenHash = await hashToken(token);
    return house.store.transaction(async (records) => {
      const flight = await knownFlight(records, at);
      const sheet = await knownSheet(records, flight, at);
      // Taking is open while glasses are poured; when alone it even comes first.
      if (flight.state !== "pouring") needState(flight, "taking a sheet", "tasting");
      if (sheet.state !== "free") refuseState("sheet_taken", "taking a sheet", "a sheet that is free", sheet);
      const taken = changed(sheet, house.clock.now(), { state: "open", tokenHash });
      await keep(records, taken);
      return { sheet: await showSheet(records, taken, flight), token };
    });
  },

  freeSheet: ({ house, at, token }) =>
    house.store.transaction(async (records) => {
      const flight = await knownFlight(records, at);
      const sheet = await knownSheet(records, flight, at);
      await needToken(token, flight.hostTokenHash);
      if (sheet.state === "locked" || sheet.state === "closed") {
        refuseState("sheet_locked", "freeing a sheet", "a sheet that is not locked", sheet);
      }
      if (sheet.state === "open") {
        await keep(records, changed(sheet, house.clock.now(), { state: "free", tokenHash: null }));
      }
      return showFlight(records, flight);
    }),

  getSheet: ({ house, at, token }) =>
    house.store.transaction(async (records) => {
      const flight = await knownFlight(records, at);
      const sheet = await knownSheet(records, flight, at);
      if (flight.state !== "revealed") await needToken(token, sheet.tokenHash);
      return showSheet(records, sheet, flight);
    }),

  editSheet: ({ house, at, body, token }) =>
    house.store.transaction(async (records) => {
      const flight = await knownFlight(records, at);
      const sheet = await knownSheet(records, flight, at);
      await writable(flight, sheet, body.version, token);
      const { written, issues } = writtenAfter(flight, sheet, body);
      if (issues.length > 0) throw new HouseRefusal(422, issues);
      const edited = changed(sheet, house.clock.now(), written);
      await keep(records, edited);
      return showSheet(records, edited, flight);
    }),

  lockSheet: ({ house, at, body, token }) =>
    house.store.transaction(async (records) => {
      const flight = await knownFlight(records, at);
      const sheet = await knownSheet(records, flight, at);
      await writable(flight, sheet, body.version, token);
      const now = house.clock.now();
      const locked = changed(sheet, now, { state: "locked", lockedAt: now.toISOString() });
      await keep(records, locked);
      return showSheet(records, locked, flight);
    }),
};
