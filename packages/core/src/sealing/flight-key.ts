import { fieldBytes } from "./fields.ts";

/** What is in a glass. */
export interface KeyGlass {
  /** Number of the glass within the flight, any text that is the same nowhere else in it. */
  readonly glass: string;
  /** Which vessel it was poured from. */
  readonly vessel: string;
  /** What was in it, in the words that stood on offer. */
  readonly name: string;
}

/** One code on one sheet. */
export interface KeyCode {
  readonly sheet: string;
  /** The set it stands in on that sheet, from 1; not where the glasses stand in one row. */
  readonly set?: number;
  /** The glass's turn on that sheet or in that set, from 1. */
  readonly turn: number;
  readonly code: string;
  readonly glass: string;
}

/** The key of a flight: everything a taster must not know before the reveal. */
export interface FlightKey {
  readonly flight: string;
  readonly glasses: readonly KeyGlass[];
  readonly codes: readonly KeyCode[];
  /** The glass that was said beforehand to have more of what is asked for, where sets are pairs. */
  readonly expected?: string;
}

/** First field of the canonical bytes: what they are, and the version of their form. A new form gets a new number. */
export const KEY_FORM = "parts-and-proof/flight-key/1";
/** The form of a key with sets. A key without any has the first form, so that what was promised in it stays checkable. */
export const KEY_FORM_SETS = "parts-and-proof/flight-key/2";

const before = (a: string, b: string): number => (a < b ? -1 : Number(a > b));

function requireOnce(what: string, values: readonly string[]): void {
  const again = values.find((value, i) => values.indexOf(value) !== i);
  if (again !== undefined)
    throw new RangeError(`a flight's key requires every ${what} once, got ${again} again`);
}

/** Whether a key is one of sets; then each of its codes stands in one. */
const hasSets = ({ codes, expected }: Pick<FlightKey, "codes" | "expected">): boolean =>
  expected !== undefined || codes.some(({ set }) => set !== undefined);

/**
 * The one byte form of a key, the same whatever order its lists come in.
 *
 * Fields (`fieldBytes`) of version 1: `KEY_FORM`, flight, number of glasses, then glass, vessel and name of each in ascending
 * order of glass; number of codes, then sheet, turn, code and glass of each in ascending order of sheet and turn. Version 2, of
 * a key with sets: `KEY_FORM_SETS`; after the glasses the expected glass or nothing; and the set of each code after its sheet,
 * in ascending order of sheet, set and turn. Texts are ordered by UTF-16 code units and taken as they are, without Unicode
 * normalisation; numbers are decimal.
 *
 * @throws RangeError when a glass, a turn or a code of a sheet (or of one of its sets) comes twice, a turn or set is not a whole
 * number from 1, a code or the expected one stands for a glass that is not in the key, only some codes have a set, or a text
 * holds half a surrogate pair
 */
export function keyBytes({ flight, glasses, codes, expected }: FlightKey): Uint8Array {
  const sets = hasSets({ codes, ...(expected === undefined ? {} : { expected }) });
  const where = ({ sheet, set }: KeyCode): string => (sets ? `set ${set} of ${sheet}` : sheet);
  requireOnce(
    "glass",
    glasses.map(({ glass }) => glass),
  );
  requireOnce(
    "turn of a sheet",
    codes.map((code) => `turn ${code.turn} of ${where(code)}`),
  );
  requireOnce(
    "code of a sheet",
    codes.map((code) => `code ${code.code} of ${where(code)}`),
  );
  const known = new Set(glasses.map(({ glass }) => glass));
  if (expected !== undefined && (expected === "" || !known.has(expected))) {
    throw new RangeError(`a flight's key requires the expected glass to be in it, got ${expected}`);
  }
  for (const { set, turn, code, glass } of codes) {
    if (sets && !(set !== undefined && Number.isSafeInteger(set) && set >= 1)) {
      throw new RangeError(`a flight's key with sets requires whole sets from 1, got ${set ?? "none"}`);
    }
    if (!Number.isSafeInteger(turn) || turn < 1) {
      throw new RangeError(`a flight's key requires whole turns from 1, got ${turn}`);
    }
    if (!known.has(glass)) {
      throw new RangeError(`a flight's key requires the glass of code ${code} to be in it, got ${glass}`);
    }
  }
  const inOrder = codes.toSorted(
    (a, b) => before(a.sheet, b.sheet) || (a.set ?? 0) - (b.set ?? 0) || a.turn - b.turn,
  );
  return fieldBytes([
    sets ? KEY_FORM_SETS : KEY_FORM,
    flight,
    glasses.length,
    ...glasses
      .toSorted((a, b) => before(a.glass, b.glass))
      .flatMap(({ glass, vessel, name }) => [glass, vessel, name]),
    ...(sets ? [expected ?? ""] : []),
    codes.length,
    ...inOrder.flatMap(({ sheet, set, turn, code, glass }) =>
      sets ? [sheet, set ?? 0, turn, code, glass] : [sheet, turn, code, glass],
    ),
  ]);
}
