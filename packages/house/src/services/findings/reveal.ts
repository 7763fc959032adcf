import { born } from "../birth.ts";
import {
  aDayAfter,
  changed,
  closedOver,
  closeJoiningsOf,
  isShut,
  keepFlight,
  keyOfUndersides,
  keyRowOf,
  knownFlight,
  needState,
  needToken,
  openedKey,
  pouredGlasses,
  saltOf,
  type SealedKey,
  sheetsOf,
  shutSheets,
  seatedNames,
  type TasterNames,
  unsealedKey,
  waitingFor,
} from "../flights/index.ts";
import { found } from "./found.ts";
import type { Asked, Handlers } from "../handler.ts";
import { happened } from "../live/index.ts";
import type { House, Records } from "../ports.ts";
import { refuse, staleEdit } from "../refuse.ts";
import type { FlightKey, FlightKeyRow, FlightRow, SheetRow } from "../rows.ts";
import { post, shelfState } from "../shelf/index.ts";
import { trail } from "../trail/index.ts";

/** F11: all locked; or all else may be closed, by the host or a day after the pouring. */
async function mayReveal(
  { house, body, token }: Asked<"revealFlight">,
  flight: FlightRow,
  sheets: readonly SheetRow[],
  names: TasterNames,
): Promise<void> {
  needState(flight, "the reveal", "tasting");
  const missing = sheets.filter((sheet) => !isShut(sheet));
  const open = missing.length;
  if (open === 0) return;
  if (!body.closeOpenSheets || flight.pouring === "alone") {
    // An empty seat waits for nobody in particular: whoever asks should know that it is only that.
    const who = waitingFor(sheets, names).map(({ taster, empty }) =>
      empty ? `${taster} (nobody sits there)` : taster,
    );
    const limit = flight.pouring === "alone" ? "the sheet locked" : "every sheet locked, or closeOpenSheets";
    refuse(409, {
      code: "sheets_not_locked",
      path: ["closeOpenSheets"],
      limit,
      received: open,
      message: `the reveal requires ${limit}, got ${open} not locked: ${who.join(", ")}`,
    });
  }
  if (!aDayAfter(flight.pouredAt, house.clock.now())) await needToken(token, flight.hostTokenHash);
}

async function keyBehind(
  house: House,
  flight: FlightRow,
  row: FlightKeyRow | null,
  sheets: readonly SheetRow[],
): Promise<SealedKey> {
  if (flight.pouring !== "alone") return unsealedKey(house, flight, row);
  const key = sheets[0] ? keyOfUndersides(flight, sheets[0]) : null;
  if (key) return key;
  refuse(409, {
    code: "undersides_missing",
    path: ["flight"],
    limit: "the undersides entered",
    received: null,
    message: "the reveal requires the undersides entered, got none",
  });
}

/** F5: what was poured leaves the shelf now, one transfer a vessel, whoever's sheet was closed. */
async function pourOut(records: Records, house: House, flight: FlightRow, key: SealedKey) {
  const shelf = await shelfState(records, flight.householdId);
  const poured = [...pouredGlasses(key)].filter(([, glasses]) => glasses > 0);
  const entries = poured
    .toSorted(([a], [b]) => (a < b ? -1 : 1))
    .map(([vesselId, glasses]) => ({
      from: { kind: "vessel" as const, vesselId },
      to: { kind: "outside" as const, name: "glass" as const },
      amount: {
        kind: "volume" as const,
        ml: flight.pourMl * glasses,
      },
      liquid: null,
      flightId: flight.id,
    }));
  await post(records, house, flight.householdId, entries, { ignoreHoldsOf: flight.id, shelf });
  return shelf;
}

async function keepKey(
  records: Records,
  house: House,
  flight: FlightRow,
  row: FlightKeyRow | null,
  opened: FlightKey,
): Promise<void> {
  if (row === null) {
    const head = born(house, flight.householdId);
    await records.insert("flightKey", { ...head, flightId: flight.id, sealed: null, opened });
  } else if (
    !(await records.replace("flightKey", changed(row, house.clock.now(), { sealed: null, opened })))
  ) {
    staleEdit("flight", flight.version, flight.version + 1);
  }
}

export const revealHandlers: Handlers<"revealFlight"> = {
  revealFlight: (asked) =>
    asked.house.store.transaction(async (records) => {
      const { house, at, caller } = asked;
      const flight = await knownFlight(records, at);
      const sheets = await sheetsOf(records, flight);
      const names = await seatedNames(records, sheets);
      await mayReveal(asked, flight, sheets, names);
      const row = await keyRowOf(records, flight);
      const key = await keyBehind(house, flight, row, sheets);
      const shelf = await pourOut(records, house, flight, key);
      const salts = [];
      for (const { id } of sheets) salts.push({ sheetId: id, salt: await saltOf(house, id) });
      const opened = openedKey(flight, shelf, key, salts);
      await keepKey(records, house, flight, row, opened);
      const now = house.clock.now();
      const ended = await shutSheets(records, house, flight, sheets);
      const closed = await closedOver(records, house, flight, ended);
      const revealed = changed(closed, now, { state: "revealed", revealedAt: now.toISOString(), holds: [] });
      await keepFlight(records, revealed);
      await closeJoiningsOf(records, house, flight);
      await happened(records, house, flight, "revealed");
      const how = ended.some(({ state }) => state === "closed")
        ? "flight closed and revealed"
        : "flight revealed";
      await trail(records, house, how, { caller, household: at.household, flight: flight.id });
      return found(revealed, opened, ended, names);
    }),
};
