import { exchangeTest, type ExchangeTest, holm } from "../statistics/index.ts";

/** What one taster said of the glasses of a flight: by glass number, only those with something written. */
export interface SaidSheet {
  readonly tasterId: string;
  readonly said: ReadonlyMap<number, ReadonlySet<string>>;
}

/** One kind of word: how often this taster said it and how often the others did, of the same glasses. */
export interface WordGap {
  readonly word: string;
  /** Glasses that this taster said it of, and those of the others, each taster's glass by itself. */
  readonly own: number;
  readonly others: number;
  /** How many of the others said it at all. */
  readonly othersWho: number;
  /** Two-sided, exact. */
  readonly p: number;
  /** The least that p could have been: where it is not small, so few sheets can show nothing. */
  readonly leastP: number;
  /** Made good for all words that could have shown it (Holm); null where this one could not. */
  readonly pTogether: number | null;
}

export interface WordGaps {
  readonly flights: number;
  /** Glasses compared: this taster's, and those of the others. */
  readonly glasses: number;
  readonly otherGlasses: number;
  /** The others, each once. */
  readonly others: number;
  /** Words that could have shown a gap, and were paid for. */
  readonly looked: number;
  /** All words together: who says little has gaps everywhere. */
  readonly amount: { readonly own: number; readonly others: number; readonly test: ExchangeTest };
  readonly words: readonly WordGap[];
}

/** A gap that could not be shown at this level, however large, is not looked for. */
const LEVEL = 0.05;

interface Compared {
  readonly own: SaidSheet;
  readonly others: readonly SaidSheet[];
  readonly glasses: readonly number[];
}

/** The glasses, and the others who wrote of all of them, that make the most to compare; null where nobody shares any. */
function compared(sheets: readonly SaidSheet[], taster: string): Compared | null {
  const own = sheets.find(({ tasterId, said }) => tasterId === taster && said.size > 0);
  if (own === undefined) return null;
  const rest = sheets.filter((sheet) => sheet !== own);
  const mine = [...own.said.keys()];
  let best: Compared | null = null;
  for (const one of rest) {
    const glasses = mine.filter((glass) => one.said.has(glass));
    const others = rest.filter(({ said }) => glasses.every((glass) => said.has(glass)));
    const worth = glasses.length * others.length;
    if (worth > (best === null ? 0 : best.glasses.length * best.others.length))
      best = { own, others, glasses };
  }
  return best;
}

const times = ({ said }: SaidSheet, glasses: readonly number[], word: string): number =>
  glasses.filter((glass) => said.get(glass)?.has(word) === true).length;

/**
 * Blind spots of a taster, and words of their own: what others at the table wrote of the same glasses and this one did not, and the
 * other way round.
 *
 * The claim refuted: in every flight this taster's sheet is any one of the table's. Whole sheets change places, so that somebody who
 * says a word of every glass counts once a flight and not once a glass. Only glasses that this taster wrote of and only others who
 * wrote of all of those are compared. p is exact and two-sided, conditional on what the table wrote (`exchangeTest`); Holm's rule is
 * over the words that could have shown a gap with so many sheets, which follows from the table and not from whose sheet is whose.
 *
 * A gap is one between this taster and these others: of words of one other alone it may be the other's habit.
 *
 * @param tables the sheets of each flight, the taster's among them or not
 * @returns words in the order of p for all together, then p, then name; null where nothing can be compared
 * @example wordGaps([[{ tasterId: "a", said: new Map([[0, new Set(["smoke"])]]) }, { tasterId: "b", said: new Map([[0, new Set()]]) }]], "a")
 */
export function wordGaps(tables: readonly (readonly SaidSheet[])[], taster: string): WordGaps | null {
  const flights = tables.flatMap((sheets) => compared(sheets, taster) ?? []);
  if (flights.length === 0) return null;
  const count = (of: (flight: Compared) => number): number =>
    flights.reduce((sum, flight) => sum + of(flight), 0);
  const test = (of: (sheet: SaidSheet, glasses: readonly number[]) => number): ExchangeTest =>
    exchangeTest(
      flights.map(({ own, others, glasses }) => ({
        own: of(own, glasses),
        others: others.map((sheet) => of(sheet, glasses)),
      })),
    );
  const inAll = (sheet: SaidSheet, glasses: readonly number[]): number =>
    glasses.reduce((sum, glass) => sum + (sheet.said.get(glass)?.size ?? 0), 0);
  const all = new Set(
    flights.flatMap(({ own, others, glasses }) =>
      [own, ...others].flatMap(({ said }) => glasses.flatMap((glass) => [...(said.get(glass) ?? [])])),
    ),
  );
  const gaps = [...all].map((word) => {
    const { own, p, leastP } = test((sheet, glasses) => times(sheet, glasses, word));
    const who = flights.flatMap(({ others, glasses }) =>
      others.filter((sheet) => times(sheet, glasses, word) > 0).map(({ tasterId }) => tasterId),
    );
    const others = count((flight) =>
      flight.others.reduce((sum, sheet) => sum + times(sheet, flight.glasses, word), 0),
    );
    return { word, own, others, othersWho: new Set(who).size, p, leastP };
  });
  const could = gaps.filter(({ leastP }) => leastP < LEVEL);
  const together = new Map(holm(could.map(({ p }) => p)).map((p, i) => [could[i]?.word, p]));
  return {
    flights: flights.length,
    glasses: count(({ glasses }) => glasses.length),
    otherGlasses: count(({ glasses, others }) => glasses.length * others.length),
    others: new Set(flights.flatMap(({ others }) => others.map(({ tasterId }) => tasterId))).size,
    looked: could.length,
    amount: {
      own: count(({ own, glasses }) => inAll(own, glasses)),
      others: count(({ others, glasses }) => others.reduce((sum, sheet) => sum + inAll(sheet, glasses), 0)),
      test: test(inAll),
    },
    words: gaps
      .map((gap) => ({ ...gap, pTogether: together.get(gap.word) ?? null }))
      .toSorted((a, b) => (a.pTogether ?? 2) - (b.pTogether ?? 2) || a.p - b.p || (a.word < b.word ? -1 : 1)),
  };
}
