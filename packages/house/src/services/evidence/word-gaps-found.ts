import {
  ATTRIBUTES,
  luckVerdict,
  shownP,
  type WordGap,
  wordGaps,
  type WordGaps,
} from "@partsproof/core/sensory";
import type { WordGapsFound } from "../../protocol/index.ts";
import type { House } from "../ports.ts";
import { plural } from "./counted.ts";
import type { FlightEvidence } from "./flight-evidence.ts";
import { keptFor } from "./kept.ts";

const CLEAR = 0.05;
/** Kinds shown each way, and words of a kind. */
const MOST_KINDS = 8;
const MOST_WORDS = 3;

const NAMES: ReadonlyMap<string, string> = new Map(ATTRIBUTES.map(({ id, name }) => [id, name]));

/** W10: kinds of words that the others used of the same glasses and this taster did not, and the other way round. */
export function wordGapsFound(
  house: House,
  { id, name }: { readonly id: string; readonly name: string },
  flights: readonly FlightEvidence[],
): WordGapsFound | null {
  const tables = flights.map(({ sheets }) =>
    sheets.map((sheet) => ({
      tasterId: sheet.tasterId,
      said: new Map(
        sheet.written().flatMap((written, i) => {
          const glass = sheet.order[i];
          // Opposites (sweet and sour, balanced and harsh) are no kind that one could miss.
          return written === null || glass === undefined
            ? []
            : [[glass, new Set([...written.kinds].filter((kind) => NAMES.has(kind)))] as const];
        }),
      ),
    })),
  );
  const evidence = [
    id,
    tables.map((sheets) =>
      sheets.map(({ tasterId, said }) => [tasterId, [...said].map(([glass, kinds]) => [glass, ...kinds])]),
    ),
  ];
  const gaps = keptFor(house, "word gaps", evidence, () => wordGaps(tables, id));
  if (gaps === null) return null;
  const words = wordsOfKinds(flights);
  const less = ({ own, others }: WordGap): number => others / gaps.otherGlasses - own / gaps.glasses;
  const shown = (all: readonly WordGap[]): WordGapsFound["missed"] =>
    all
      .toSorted(
        (a, b) =>
          (a.pTogether ?? 2) - (b.pTogether ?? 2) || a.p - b.p || Math.abs(less(b)) - Math.abs(less(a)),
      )
      .slice(0, MOST_KINDS)
      .map((gap) => ({
        kind: gap.word,
        label: NAMES.get(gap.word) ?? gap.word,
        words: words.get(gap.word) ?? [],
        own: gap.own,
        others: gap.others,
        othersWho: gap.othersWho,
        p: gap.p,
        pTogether: gap.pTogether,
        sentence: sentenceOf(gap, gaps, name),
      }));
  const missed = shown(gaps.words.filter((gap) => less(gap) > 0));
  const alone = shown(gaps.words.filter((gap) => less(gap) < 0));
  return {
    flights: gaps.flights,
    glasses: gaps.glasses,
    otherGlasses: gaps.otherGlasses,
    others: gaps.others,
    looked: gaps.looked,
    missed,
    alone,
    missedSaid: headOf(missed, gaps, `left out by ${name}`),
    aloneSaid: headOf(alone, gaps, `${name}'s own`),
    amountSaid: amountOf(gaps, name),
    method: `kinds of words read from the notes and the intensities, once a glass; exact law with ${name}'s sheet any one of each table's, whole sheets changing places, two-sided; ${
      gaps.looked === 0
        ? "none of the kinds could have shown a gap with so few sheets"
        : `Holm's rule over the ${plural(gaps.looked, "kind")} that could have shown one`
    }. A gap is one between ${name} and these others; that other tasters have pages too is not paid for`,
  };
}

/** The commonest words of each kind, over all sheets. */
function wordsOfKinds(flights: readonly FlightEvidence[]): Map<string, string[]> {
  const counts = new Map<string, Map<string, number>>();
  for (const written of flights.flatMap(({ sheets }) => sheets.flatMap((sheet) => sheet.written())))
    for (const [word, kind] of written?.kindOf ?? []) {
      const own = counts.get(kind) ?? new Map<string, number>();
      counts.set(kind, own.set(word, (own.get(word) ?? 0) + 1));
    }
  return new Map(
    [...counts].map(([kind, own]) => [
      kind,
      [...own]
        .toSorted(([a, m], [b, n]) => n - m || (a < b ? -1 : 1))
        .slice(0, MOST_WORDS)
        .map(([word]) => word),
    ]),
  );
}

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

const paid = (gaps: WordGaps): string =>
  gaps.looked === 1 ? "" : `, allowing for all ${gaps.looked} kinds looked at`;

function sentenceOf(
  { word, own, others, othersWho, pTogether, leastP }: WordGap,
  gaps: WordGaps,
  name: string,
): string {
  const kind = NAMES.get(word) ?? word;
  const count = `${capital(kind)}: ${name} in ${own} of ${plural(gaps.glasses, "glass", "glasses")}, the others in ${others} of ${gaps.otherGlasses}`;
  if (pTogether === null)
    return `${count}: too few to tell (the widest gap that these sheets could show has ${shownP(leastP)}).`;
  const one =
    pTogether < CLEAR && othersWho === 1 && gaps.others > 1 && others > 0
      ? ", who are one person, so that it may be a word of theirs"
      : "";
  return `${count}${one}: that ${luckVerdict(pTogether)} (${shownP(pTogether)}${paid(gaps)}).`;
}

function headOf(shown: WordGapsFound["missed"], gaps: WordGaps, whose: string): string {
  if (shown.length === 0) return `No kind of word is ${whose}`;
  const clear = shown.filter(({ pTogether }) => (pTogether ?? 1) < CLEAR);
  const [first] = clear;
  if (first === undefined) {
    const ps = shown.flatMap(({ pTogether }) => pTogether ?? []);
    return ps.length === 0
      ? `Too few sheets to tell whether any kind of word is ${whose}`
      : `No kind of word is clearly ${whose}: what there is ${luckVerdict(Math.min(...ps))}`;
  }
  const labels = clear.map(({ label }) => label);
  const last = labels.pop() ?? "";
  const all = labels.length === 0 ? last : `${labels.join(", ")} and ${last}`;
  return `${capital(all)} ${clear.length === 1 ? "is" : "are"} ${whose}, more than luck would have it (${shownP(Math.max(...clear.map(({ pTogether }) => pTogether ?? 1)))}${paid(gaps)})`;
}

/** Who writes little has gaps everywhere, and that is no blind spot. */
function amountOf({ amount, glasses, otherGlasses }: WordGaps, name: string): string {
  const [own, others] = [amount.own / glasses, amount.others / otherGlasses].map((x) => x.toFixed(1));
  const { p, lower, upper } = amount.test;
  const count = `${name} wrote ${own} kinds a glass, the others ${others}`;
  const how = `${shownP(p)}, exact, two-sided`;
  if (p >= CLEAR) return `${count}: no more and no less than luck allows (${how}).`;
  return lower < upper
    ? `${count}: fewer altogether, so that a gap may be that and no blind spot (${how}).`
    : `${count}: more altogether, so that a word of their own may be that (${how}).`;
}
