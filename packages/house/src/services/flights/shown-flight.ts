import { UK_UNIT_G, US_STANDARD_DRINK_G } from "@partsproof/core/sensory";
import type { Alcohol, Flight, Sheet } from "../../protocol/index.ts";
import { setOfMark } from "./alone-marks.ts";
import { asksOf, designOf, questionOf, setsOf, taskOf } from "./question.ts";
import type { z } from "zod";
import { sheetsOf } from "./flight-rows.ts";
import type { Reads, Records } from "../ports.ts";
import type { FlightRow, SheetRow } from "../rows.ts";

export type TasterNames = ReadonlyMap<string, string>;

export async function tasterNames(records: Records, householdId: string): Promise<TasterNames> {
  const tasters = await records.list("taster", householdId);
  return new Map(tasters.map(({ id, name }) => [id, name]));
}

/** Of those who sit at these sheets only: everybody who ever sat in the household would be read for every stream. */
export async function seatedNames(records: Reads, sheets: readonly SheetRow[]): Promise<TasterNames> {
  const [sheet] = sheets;
  if (sheet === undefined) return new Map();
  const ids = [...new Set(sheets.map(({ tasterId }) => tasterId))];
  const tasters = await records.list("taster", sheet.householdId, { ids });
  return new Map(tasters.map(({ id, name }) => [id, name]));
}

/** F3, J5: whether two names are one person's, however they were typed. */
export const sameName = (a: string, b: string): boolean => a.trim().toLowerCase() === b.trim().toLowerCase();

export const alcoholOf = (grams: number): z.infer<typeof Alcohol> => ({
  grams,
  usStandardDrinks: grams / US_STANDARD_DRINK_G,
  ukUnits: grams / UK_UNIT_G,
});

type SheetState = Sheet["state"];

/** Q17: whose sheets the reveal waits for. */
export const waitingFor = (sheets: readonly SheetRow[], names: TasterNames): Flight["waitingFor"] =>
  sheets
    .filter(({ state }) => state === "free" || state === "open")
    .map(({ id, tasterId, state }) => ({
      sheetId: id,
      taster: names.get(tasterId) ?? "",
      empty: state === "free",
    }));

/** What a flight shows to anyone of the household. Nothing here is read from its key. */
export function shownFlight(row: FlightRow, sheets: readonly SheetRow[], names: TasterNames): Flight {
  return {
    id: row.id,
    version: row.version,
    name: row.name,
    pouring: row.pouring as Flight["pouring"],
    state: row.state as Flight["state"],
    question: questionOf(row),
    design: { ...designOf(row), said: [...designOf(row).said] },
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
    waitingFor: row.state === "tasting" ? waitingFor(sheets, names) : [],
    marks: row.marks.map((mark, i) => ({ ...mark, ...setOfMark(row, i) })),
    undersidesEntered: sheets.some((sheet) => sheet.undersides !== null),
    alcoholAtMost: alcoholOf(row.alcoholAtMostG),
    createdAt: row.createdAt,
    pouredAt: row.pouredAt,
    revealedAt: row.revealedAt,
    commitment: row.commitment,
    closing: row.closing?.hash ?? null,
  };
}

/** Q8: a taster is told the names they are to find or to come close to, and no others, until the reveal. */
export function toldToTaster(flight: Flight): Flight {
  const { question, namesOnOffer, targetNameId, design, state } = flight;
  if (state === "revealed" || question === "which_is_which") return flight;
  const target = question === "how_close" ? targetNameId : null;
  return {
    ...flight,
    namesOnOffer: namesOnOffer.filter(({ nameId }) => nameId === target),
    targetNameId: target,
    design: { ...design, controlNameId: null },
  };
}

/** `shownFlight` with its sheets and names read. */
export async function showFlight(records: Records, row: FlightRow): Promise<Flight> {
  const sheets = await sheetsOf(records, row);
  return shownFlight(row, sheets, await seatedNames(records, sheets));
}

const targetOf = ({ namesOnOffer, targetNameId }: FlightRow): string | null =>
  namesOnOffer.find(({ nameId }) => nameId === targetNameId)?.label ?? null;

/** A sheet to whom it belongs, or to all after the reveal. Every glass has its guess, null for none. */
export function shownSheet(row: SheetRow, flight: FlightRow, names: TasterNames): Sheet {
  const question = questionOf(flight);
  const glasses = row.order.map((code, i) => ({ position: i + 1, code }));
  return {
    id: row.id,
    version: row.version,
    flightId: flight.id,
    flightName: flight.name,
    flightState: flight.state as Flight["state"],
    pouring: flight.pouring as Flight["pouring"],
    question,
    task: taskOf(flight),
    asks: asksOf(question),
    target: question === "how_close" ? targetOf(flight) : null,
    reference: question === "how_close" && designOf(flight).reference,
    tasterId: row.tasterId,
    taster: names.get(row.tasterId) ?? "",
    state: row.state as SheetState,
    glasses,
    sets: setsOf(flight, glasses).map((own, i) => {
      const { picked = null, ranking = null } = row.answers.find(({ set }) => set === i + 1) ?? {};
      return { set: i + 1, reference: designOf(flight).method === "duo_trio", glasses: own, picked, ranking };
    }),
    namesOnOffer: asksOf(question).guesses ? flight.namesOnOffer.map((name) => ({ ...name })) : [],
    notes: [...row.notes],
    strengths: row.strengths.map((said) => ({ ...said })),
    guesses: row.order.map((code) => ({
      code,
      nameId: null,
      ...row.guesses.find((guess) => guess.code === code),
    })),
    ranking: row.ranking === null ? null : row.ranking.map((tie) => [...tie]),
    typedBy: row.typedBy,
    alcoholAtMost: alcoholOf(flight.alcoholAtMostG),
    undersidesEntered: row.undersides !== null,
    lockedAt: row.lockedAt,
    updatedAt: row.updatedAt,
    entries: row.entries,
  };
}
