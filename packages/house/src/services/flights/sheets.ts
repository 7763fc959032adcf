import type { Sheet } from "../../protocol/index.ts";
import { closedOver } from "./closing.ts";
import { entriesOf, keepEntry, needAfter, sentBefore, shownEntry, writtenIn } from "./entries.ts";
import { changed, knownFlight, knownSheet, needState, sheetsOf } from "./flight-rows.ts";
import { revokeGuestsOf } from "./guests.ts";
import type { Handlers } from "../handler.ts";
import { hashToken, newToken } from "../ids.ts";
import { happened } from "../live/index.ts";
import type { Records } from "../ports.ts";
import { HouseRefusal, refuse, staleEdit } from "../refuse.ts";
import type { FlightRow, SheetRow } from "../rows.ts";
import { writtenAfter } from "./sheet-edit.ts";
import { showFlight, shownSheet } from "./shown-flight.ts";
import { needToken } from "./tokens.ts";
import { trail } from "../trail/index.ts";

export async function showSheet(records: Records, sheet: SheetRow, flight: FlightRow): Promise<Sheet> {
  const taster = await records.find("taster", flight.householdId, sheet.tasterId);
  return shownSheet(sheet, flight, new Map([[sheet.tasterId, taster?.name ?? ""]]));
}

function refuseState(code: string, act: string, limit: string, sheet: SheetRow): never {
  const message = `${act} requires ${limit}, got one that is ${sheet.state}`;
  refuse(409, { code, path: ["sheet"], limit, received: sheet.state, message });
}

/** F8: its own token, a poured flight, an open sheet. */
function needWritable(flight: FlightRow, sheet: SheetRow): void {
  // A revealed flight has no open sheet, and that is the plainer answer.
  if (flight.state !== "revealed") needState(flight, "writing on a sheet", "tasting");
  if (sheet.state !== "open") refuseState("sheet_locked", "writing on a sheet", "an open sheet", sheet);
}

function needVersion(sheet: SheetRow, version: number | undefined): void {
  if (version !== undefined && sheet.version !== version) staleEdit("sheet", version, sheet.version);
}

async function keep(records: Records, sheet: SheetRow): Promise<void> {
  if (!(await records.replace("sheet", sheet))) staleEdit("sheet", sheet.version - 1, sheet.version);
}

/** F7: a free sheet with the hash of the token that opens it from now on. */
export async function takeFree(
  records: Records,
  now: Date,
  flight: FlightRow,
  sheet: SheetRow,
  tokenHash: string,
): Promise<SheetRow> {
  // Taking is open while glasses are poured; when alone it even comes first.
  if (flight.state !== "pouring") needState(flight, "taking a sheet", "tasting");
  if (sheet.state !== "free") refuseState("sheet_taken", "taking a sheet", "a sheet that is free", sheet);
  const taken = changed(sheet, now, { state: "open", tokenHash });
  await keep(records, taken);
  return taken;
}

/** All that a write rests on is the sheet's own row, which it writes as well: neighbours need not wait for it. */
const WRITING = "snapshot";

export const sheetHandlers: Handlers<
  "takeSheet" | "freeSheet" | "getSheet" | "editSheet" | "lockSheet" | "addEntry" | "listEntries"
> = {
  takeSheet: async ({ house, at }) => {
    const token = newToken(house);
    const tokenHash = await hashToken(token);
    return house.store.transaction(async (records) => {
      const flight = await knownFlight(records, at);
      const sheet = await knownSheet(records, flight, at);
      const taken = await takeFree(records, house.clock.now(), flight, sheet, tokenHash);
      await happened(records, house, flight, "seat taken", { sheetId: sheet.id });
      return { sheet: await showSheet(records, taken, flight), token };
    });
  },

  freeSheet: ({ house, at, token, caller }) =>
    house.store.transaction(async (records) => {
      const flight = await knownFlight(records, at);
      const sheet = await knownSheet(records, flight, at);
      await needToken(token, flight.hostTokenHash);
      if (sheet.state === "locked" || sheet.state === "closed") {
        refuseState("sheet_locked", "freeing a sheet", "a sheet that is not locked", sheet);
      }
      if (sheet.state === "open") {
        await keep(records, changed(sheet, house.clock.now(), { state: "free", tokenHash: null }));
        await revokeGuestsOf(records, house, flight, sheet.id);
        await happened(records, house, flight, "seat freed", { sheetId: sheet.id });
        await trail(records, house, "sheet freed", { caller, household: at.household, flight: flight.id });
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
      await needToken(token, sheet.tokenHash);
      needWritable(flight, sheet);
      needVersion(sheet, body.version);
      const { written, issues } = writtenAfter(flight, sheet, body);
      if (issues.length > 0) throw new HouseRefusal(422, issues);
      const entry = { kind: "written", written: writtenIn(body) } as const;
      const kept = await keepEntry(records, house, flight, sheet, entry, written);
      return showSheet(records, kept.sheet, flight);
    }, WRITING),

  addEntry: ({ house, at, body, token }) =>
    house.store.transaction(async (records) => {
      const flight = await knownFlight(records, at);
      const sheet = await knownSheet(records, flight, at);
      await needToken(token, sheet.tokenHash);
      const entry = { kind: "written", key: body.key, written: writtenIn(body) } as const;
      const before = await sentBefore(records, sheet, body.key, entry);
      if (before) return { entry: shownEntry(before), sheet: await showSheet(records, sheet, flight) };
      needWritable(flight, sheet);
      needAfter(sheet, body.after);
      const { written, issues } = writtenAfter(flight, sheet, body);
      if (issues.length > 0) throw new HouseRefusal(422, issues);
      const kept = await keepEntry(records, house, flight, sheet, entry, written);
      return { entry: shownEntry(kept.entry), sheet: await showSheet(records, kept.sheet, flight) };
    }, WRITING),

  listEntries: ({ house, at, token }) =>
    house.store.transaction(async (records) => {
      const flight = await knownFlight(records, at);
      const sheet = await knownSheet(records, flight, at);
      if (flight.state !== "revealed") await needToken(token, sheet.tokenHash);
      return { items: (await entriesOf(records, sheet)).map(shownEntry) };
    }),

  lockSheet: ({ house, at, body, token }) =>
    house.store.transaction(async (records) => {
      const flight = await knownFlight(records, at);
      const sheet = await knownSheet(records, flight, at);
      await needToken(token, sheet.tokenHash);
      const entry = { kind: "locked", key: body.key, written: {} } as const;
      if (await sentBefore(records, sheet, body.key, entry)) return showSheet(records, sheet, flight);
      needWritable(flight, sheet);
      needVersion(sheet, body.version);
      if (body.after !== undefined) needAfter(sheet, body.after);
      const lockedAt = house.clock.now().toISOString();
      const kept = await keepEntry(records, house, flight, sheet, entry, { state: "locked", lockedAt });
      await happened(records, house, flight, "locked", { sheetId: sheet.id });
      await closedOver(records, house, flight, await sheetsOf(records, flight));
      return showSheet(records, kept.sheet, flight);
    }),
};
