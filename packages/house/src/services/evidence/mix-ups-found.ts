import { checkGuesses, type GuessSheet, luckVerdict, shownP, takenFor } from "@partsproof/core/sensory";
import type { MixUpsFound } from "../../protocol/index.ts";
import type { House } from "../ports.ts";
import { countedOf } from "./counted.ts";
import type { FlightEvidence, SheetEvidence } from "./flight-evidence.ts";
import { keptFor } from "./kept.ts";

/** A sheet with guesses beside the truth, its names as keys. */
export interface NamedSheet extends GuessSheet {
  readonly flightId: string;
  readonly tasterId: string;
}

export type RenameKey = (nameId: string) => string;

/** Every locked sheet on which glasses were named. */
export function namedSheets(
  flights: readonly FlightEvidence[],
  rename: RenameKey = (nameId) => nameId,
  fits: (sheet: SheetEvidence) => boolean = () => true,
): NamedSheet[] {
  return flights.flatMap((flight) => {
    const offer: Record<string, number> = {};
    for (const [nameId, count] of Object.entries(flight.offer))
      offer[rename(nameId)] = (offer[rename(nameId)] ?? 0) + count;
    return flight.sheets
      .filter((sheet) => sheet.guesses.some((guess) => guess !== null) && fits(sheet))
      .map(({ tasterId, order, guesses }) => ({
        flightId: flight.flightId,
        tasterId,
        truth: order.map((glass) => rename(flight.glasses[glass]?.nameId ?? "")),
        guesses: guesses.map((guess) => (guess === null ? null : rename(guess))),
        offer,
      }))
      .filter((sheet) => checkGuesses(sheet).ok);
  });
}

const METHOD =
  "exact law of names given out at random among the glasses named wrong, one-sided, Holm's rule over all pairs looked at";

/** Pairs shown: those that stand out, and no endless list of what never happened. */
const MOST_PAIRS = 12;

/** W3: who was taken for whom; null where nothing was named. `of` asks for the pairs with one name only. */
export function mixUpsFound(
  house: House,
  sheets: readonly NamedSheet[],
  labels: ReadonlyMap<string, string>,
  of?: string,
): MixUpsFound | null {
  if (sheets.length === 0) return null;
  const label = (key: string): string => labels.get(key) ?? "";
  const evidence = [of, sheets.map(({ truth, guesses, offer }) => [truth, guesses, offer])];
  const pairs = keptFor(house, "taken for", evidence, () => takenFor(sheets, "which_were_right", of));
  const shown = pairs
    .toSorted(
      (a, b) =>
        a.pTogether - b.pTogether ||
        a.p - b.p ||
        b.there + b.back - a.there - a.back ||
        (a.pair[0] < b.pair[0] ? -1 : 1),
    )
    .map(({ pair: [a, b], there, back, expected, p, pTogether }) => {
      const turned = of === b;
      const [one, other] = turned ? [b, a] : [a, b];
      const [out, home] = turned ? [back, there] : [there, back];
      return {
        one,
        other,
        there: out,
        back: home,
        expected,
        p,
        pTogether,
        sentence:
          out + home === 0
            ? `${label(one)} and ${label(other)} were never taken for each other.`
            : `${label(one)} was called ${label(other)} ${times(out)} and the other way round ${times(home)}; by luck ${expected.toFixed(1)} in all: that ${luckVerdict(pTogether)} (${shownP(pTogether)}${together(pairs.length)}).`,
      };
    });
  const names = boardNames(sheets, shown, of);
  const clear = shown.filter(({ pTogether }) => pTogether < 0.05);
  return {
    counted: countedOf(sheets),
    names: names.map((key) => ({ key, label: label(key) })),
    board: names.map((row) =>
      names.map((column) =>
        sheets.reduce(
          (sum, { truth, guesses }) =>
            sum + truth.filter((name, i) => name === row && guesses[i] === column).length,
          0,
        ),
      ),
    ),
    pairs: shown.slice(0, MOST_PAIRS),
    sentence: sentenceOf(clear, shown, label),
    method: METHOD,
  };
}

/** What p is of, where more than one pair was looked at. */
const together = (pairs: number): string =>
  pairs === 1 ? "" : `, allowing for all ${pairs} pairs looked at`;

const times = (count: number): string =>
  count === 0 ? "never" : count === 1 ? "once" : count === 2 ? "twice" : `${count} times`;

/** All names of a small board; else those most mixed up. */
const MOST_NAMES = 12;

function boardNames(
  sheets: readonly NamedSheet[],
  pairs: readonly {
    readonly one: string;
    readonly other: string;
    readonly there: number;
    readonly back: number;
  }[],
  of: string | undefined,
): string[] {
  const all = new Set(
    sheets.flatMap(({ truth, guesses }) => [...truth, ...guesses.filter((g) => g !== null)]),
  );
  if (all.size <= MOST_NAMES) return [...all].toSorted();
  const met = pairs
    .filter(({ there, back }) => there + back > 0)
    .toSorted((a, b) => b.there + b.back - a.there - a.back)
    .flatMap(({ one, other }) => [one, other]);
  return [...new Set([...(of === undefined ? [] : [of]), ...met, ...all])].slice(0, MOST_NAMES);
}

function sentenceOf(
  clear: MixUpsFound["pairs"],
  all: MixUpsFound["pairs"],
  label: (key: string) => string,
): string {
  const [first] = clear;
  if (first !== undefined) {
    return `${label(first.one)} and ${label(first.other)} are taken for each other more than luck would have it (${shownP(first.pTogether)}${together(all.length)}).`;
  }
  const most = all.toSorted((a, b) => b.there + b.back - a.there - a.back)[0];
  if (most === undefined || most.there + most.back === 0) return "No two names were taken for each other.";
  const least = Math.min(...all.map(({ pTogether }) => pTogether));
  const none = `No mix-up is clear of luck (${shownP(least)}${together(all.length)}).`;
  const count = most.there + most.back;
  return count <= 2
    ? none
    : `${none} The commonest, ${label(most.one)} and ${label(most.other)}, came up ${times(count)}.`;
}
