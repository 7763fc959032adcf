import { UK_UNIT_G, US_STANDARD_DRINK_G } from "@partsproof/core/sensory";
import type { Alcohol, Flight, Sheet } from "../../protocol/index.ts";
import type { z } from "zod";
import { sheetsOf } from "./flight-rows.ts";
import type { Records } from "../ports.ts";
import type { FlightRow, SheetRow } from "../rows.ts";

export type TasterNames = ReadonlyMap<string, string>;

export async function tasterNames(records: Records, householdId: string): Promise<TasterNames> {
  const tasters = await records.list("taster", householdId);
  return new Map(tasters.map(({ id, name }) => [id, name]));
}

export const alcoholOf = (grams: number): z.infer<typeof Alcohol> => ({
  grams,
  usStandardDrinks: grams / US_STANDARD_DRINK_G,
  ukUnits: grams / UK_UNIT_G,
});

type SheetState = Sheet["state"];

/** What a flight shows to anyone of the household. Nothing here is read from its key. */
export function shownFlight(row: FlightRow, sheets: readonly SheetRow[], names: TasterNames): Flight {
  return {
    id: row.id,
    version: row.version,
    name: row.name,
    pouring: row.pouring as Flight["pouring"],
    state: row.state as Flight["state"],
    glassCount: row.glassCount,
    pourMl: row.pourMl,
    namesOnOffer: row.namesOnOffer.map((name) => ({ ...name })),
    targetNameId: row.targetNameId,
    pourer: row.pourer,
    sheets: sheets.map((sheet) => ({
      sheetId: sheet.id,
      tasterId: sheet.tasterId,
      taster: names.get(sheet.tasterId) ?? "",
      state: sheet.state as SheetState,
      lockedAt: sheet.lockedAt,
    })),
    marks: row.marks.map((mark) => ({ ...mark })),
    undersidesEntered: sheets.some((sheet) => sheet.undersides !== null),
    alcoholAtMost: alcoholOf(row.alcoholAtMostG),
    createdAt: row.createdAt,
    pouredAt: row.pouredAt,
    revealedAt: row.revealedAt,
    commitment: row.commitment,
    closing: row.closing?.hash ?? null,
  };
}

/** `shownFlight` with its sheets and names read. */
export async function showFlight(records: Records, row: FlightRow): Promise<Flight> {
  return shownFlight(row, await sheetsOf(records, row), await tasterNames(records, row.householdId));
}

/** A sheet to whom it belongs, or to all after the reveal. Every glass has its guess, null for none. */
export function shownSheet(row: SheetRow, flight: FlightRow, names: TasterNames): Sheet {
  return {
    id: row.id,
    version: row.version,
    flightId: flight.id,
    flightName: flight.name,
    flightState: flight.state as Flight["state"],
    pouring: flight.pouring as Flight["pouring"],
    tasterId: row.tasterId,
    taster: names.get(row.tasterId) ?? "",
    state: row.state as SheetState,
    glasses: row.order.map((code, i) => ({ position: i + 1, code })),
    namesOnOffer: flight.namesOnOffer.map((name) => ({ ...name })),
    notes: [...row.notes],
    guesses: row.order.map((code) => ({
      code,
      nameId: row.guesses.find((guess) => guess.code === code)?.nameId ?? null,
    })),
    ranking: row.ranking === null ? null : row.ranking.map((tie) => [...tie]),
    alcoholAtMost: alcoholOf(flight.alcoholAtMostG),
    undersidesEntered: row.undersides !== null,
    lockedAt: row.lockedAt,
    updatedAt: row.updatedAt,
    entries: row.entries,
  };
}
