import { cochranQ, holm, itemMap, repeatableRng } from "@partsproof/core/statistics";
import { shownP } from "@partsproof/core/sensory";
import type { MapFound, WeighedFlight } from "../../protocol/index.ts";
import type { House } from "../ports.ts";
import { plural } from "./counted.ts";
import type { FlightEvidence } from "./flight-evidence.ts";
import { keptFor } from "./kept.ts";

const MOST_WORDS = 24;
/** Fewer tasters than this leave no scatter to speak of. */
const FEWEST_TASTERS = 3;
/** Cases gone through for the exact law of one word; beyond, the approximation is said. */
const WORD_STEPS = 200_000;

interface Table {
  readonly words: readonly string[];
  /** `said[taster][glass][word]` */
  readonly said: readonly (readonly (readonly boolean[])[])[];
}

/** Words that two tasters or more used, and that were not said of every glass; of tasters with notes on every glass. */
function tableOf({ sheets, glasses }: FlightEvidence): Table | null {
  const own = sheets.flatMap(({ order, written }) => {
    const words = written().flatMap((one) => (one === null ? [] : [one.words]));
    return order.length === glasses.length && words.length === order.length ? [{ order, words }] : [];
  });
  if (own.length < FEWEST_TASTERS || glasses.length < 3) return null;
  const at = own.map(({ order, words }) =>
    glasses.map((_, glass) => new Set(words[order.indexOf(glass)] ?? [])),
  );
  const all = [...new Set(at.flatMap((sheet) => sheet.flatMap((words) => [...words])))];
  const counted = all.map((word) => ({
    word,
    tasters: at.filter((sheet) => sheet.some((words) => words.has(word))).length,
    times: at.flat().filter((words) => words.has(word)).length,
  }));
  const words = counted
    .filter(({ tasters, times }) => tasters > 1 && times < at.length * glasses.length)
    .toSorted((a, b) => b.tasters - a.tasters || b.times - a.times || (a.word < b.word ? -1 : 1))
    .slice(0, MOST_WORDS)
    .map(({ word }) => word);
  if (words.length < 2) return null;
  return { words, said: at.map((sheet) => sheet.map((set) => words.map((word) => set.has(word)))) };
}

const keysOf = (flight: FlightEvidence, labels: readonly string[]) =>
  flight.glasses.map(({ nameId }, i) => ({ key: `glass:${i}`, name: nameId, label: labels[i] ?? "" }));

/** W9: where each glass lies by the words used of it, with how sure that is; null where too few said too little. */
export function mapFound(house: House, flight: FlightEvidence, labels: readonly string[]): MapFound | null {
  const table = tableOf(flight);
  if (table === null) return null;
  const scores = table.said.map((sheet) => sheet.map((row) => row.map(Number)));
  const width = (rows: readonly (readonly number[])[]): number => new Set(rows.map((row) => row.join())).size;
  const sums = table.said[0]?.map((_, g) =>
    table.words.map((__, w) => scores.reduce((n, s) => n + (s[g]?.[w] ?? 0), 0)),
  );
  if (sums === undefined || width(sums) < 3) return null;
  const map = keptFor(house, "map", scores, (start) => itemMap(scores, repeatableRng(start)));
  const points = map.scores.map(([x = 0, y = 0]) => [x, y] as const);
  const items = keysOf(flight, labels).map((item, i) => {
    const { axes, angle } = map.ellipses[i] ?? { axes: [0, 0] as const, angle: 0 };
    const [x = 0, y = 0] = points[i] ?? [];
    return { ...item, x, y, ellipse: axes[0] > 0 ? { along: axes[0], across: axes[1], turn: angle } : null };
  });
  const pairs = items.flatMap((a, i) =>
    items.slice(i + 1).map((b) => ({ a, b, far: Math.hypot(a.x - b.x, a.y - b.y) })),
  );
  const byDistance = pairs.toSorted((a, b) => a.far - b.far);
  const [near, far] = [byDistance[0], byDistance.at(-1)];
  // Of so many pairs some lie apart by luck: which is said, not that they differ.
  const sentence = `By the words used, ${near?.a.label} and ${near?.b.label} lie nearest, ${far?.a.label} and ${far?.b.label} farthest apart; ${scores.length} tasters make this a picture and no proof.`;
  return {
    items,
    words: table.words.map((word, w) => ({
      word,
      x: map.loadings[0]?.[w] ?? 0,
      y: map.loadings[1]?.[w] ?? 0,
    })),
    shown: (map.shares[0] ?? 0) + (map.shares[1] ?? 0),
    tasters: scores.length,
    level: map.level,
    sentence,
    method: `principal components of ${plural(table.words.length, "word")} used by two tasters or more, ellipses from drawing the ${scores.length} tasters again 500 times; with so few tasters they are somewhat too small`,
  };
}

/** W9: which words go with some of the glasses, each tested and all paid for; null where too few said too little. */
export function wordTestsFound(
  house: House,
  flight: FlightEvidence,
  labels: readonly string[],
): WeighedFlight["wordTests"] {
  const table = tableOf(flight);
  if (table === null) return null;
  const tests = keptFor(house, "words", table, () =>
    table.words.flatMap((word, w) => {
      const test = cochranQ(
        table.said.map((sheet) => sheet.map((row) => row[w] ?? false)),
        WORD_STEPS,
      );
      if (!test.ok) return [];
      const said = labels.map((label, g) => ({
        label,
        tasters: table.said.filter((sheet) => sheet[g]?.[w] === true).length,
      }));
      const method =
        test.method === "exact" ? "Cochran's Q, exact" : `Cochran's Q, chi-square with ${test.df} degrees`;
      return [{ word, said, p: test.p, method }];
    }),
  );
  if (tests.length === 0) return null;
  const together = holm(tests.map(({ p }) => p));
  const words = tests
    .map((test, i) => ({ ...test, pTogether: together[i] ?? 1 }))
    .toSorted((a, b) => a.pTogether - b.pTogether || a.p - b.p);
  const clear = words.filter(({ pTogether }) => pTogether < 0.05).map(({ word }) => `“${word}”`);
  const [first] = words;
  return {
    words: words.slice(0, 8),
    sentence:
      clear.length > 0
        ? `${clear.join(", ")} ${clear.length === 1 ? "goes" : "go"} with some glasses more than luck would have it (Holm over ${plural(words.length, "word")}).`
        : `No word is clear of luck (the nearest, “${first?.word}”, ${shownP(first?.pTogether ?? 1)}; Holm over ${plural(words.length, "word")}).`,
  };
}
