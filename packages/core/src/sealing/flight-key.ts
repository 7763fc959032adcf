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
  /** The glass's turn on that sheet, from 1. */
  readonly turn: number;
  readonly code: string;
  readonly glass: string;
}

/** The key of a flight: everything a taster must not know before the reveal. */
export interface FlightKey {
  readonly flight: string;
  readonly glasses: readonly KeyGlass[];
  readonly codes: readonly KeyCode[];
}

/** First field of the canonical bytes: what they are, and the version of their form. A new form gets a new number. */
export const KEY_FORM = "parts-and-proof/flight-key/1";

const before = (a: string, b: string): number => (a < b ? -1 : Number(a > b));

function requireOnce(what: string, values: readonly string[]): void {
  const again = values.find((value, i) => values.indexOf(value) !== i);
  if (again !== undefined)
    throw new RangeError(`a flight's key requires every ${what} once, got ${again} again`);
}

/**
 * The one byte form of a key (version 1), the same whatever order its lists come in.
 *
 * Fields (`fieldBytes`): `KEY_FORM`, flight, number of glasses, then glass, vessel and name of each in ascending order of
 * glass; number of codes, then sheet, turn, code and glass of each in ascending order of sheet and turn. Texts are ordered by
 * UTF-16 code units and taken as they are, without Unicode normalisation; numbers are decimal.
 *
 * @throws RangeError when a glass, a sheet's turn or a sheet's code comes twice, a turn is not a whole number from 1, a code
 * stands for a glass that is not in the key, or a text holds half a surrogate pair
 */
export function keyBytes({ flight, glasses, codes }: FlightKey): Uint8Array {
  requireOnce(
    "glass",
    glasses.map(({ glass }) => glass),
  );
  requireOnce(
    "turn of a sheet",
    codes.map(({ sheet, turn }) => `turn ${turn} of ${sheet}`),
  );
  requireOnce(
    "code of a sheet",
    codes.map(({ sheet, code }) => `code ${code} of ${sheet}`),
  );
  const known = new Set(glasses.map(({ glass }) => glass));
  for (const { turn, code, glass } of codes) {
    if (!Number.isSafeInteger(turn) || turn < 1) {
      throw new RangeError(`a flight's key requires whole turns from 1, got ${turn}`);
    }
    if (!known.has(glass)) {
      throw new RangeError(`a flight's key requires the glass of code ${code} to be in it, got ${glass}`);
    }
  }
  const inOrder = codes.toSorted((a, b) => before(a.sheet, b.sheet) || a.turn - b.turn);
  return fieldBytes([
    KEY_FORM,
    flight,
    glasses.length,
    ...glasses
      .toSorted((a, b) => before(a.glass, b.glass))
      .flatMap(({ glass, vessel, name }) => [glass, vessel, name]),
    codes.length,
    ...inOrder.flatMap(({ sheet, turn, code, glass }) => [sheet, turn, code, glass]),
  ]);
}
