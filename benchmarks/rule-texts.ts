import { parseRule } from "@partsproof/core/slots";
import { cutTokens } from "../packages/core/src/slots/cut-tokens.ts";
import { boundedTable } from "./bounded-table.ts";
import { timed } from "./timed.ts";

// Rules of a slot read from hostile text: as long as a rule may be, and how the time grows where the text grows ten times.

const LONGEST = 2000;
const MOST_MS = 2;
/** Time in proportion gives 10, squares give 100. */
const MOST_TIMES = 30;
const PIECES = [
  '"a\\"',
  '"',
  "a ",
  "a or ",
  "55 % or stronger, ",
  "wheat ",
  "1",
  "9.",
  "  ",
  "≥",
  "only a or ",
];
/** Pieces a text is cut into, of more characters than a rule may have. */
const CUT = 'a "b\\"" or 5 % ';

const largest = <Row>(rows: readonly Row[], of: (row: Row) => number): Row | undefined =>
  rows.toSorted((a, b) => of(b) - of(a))[0];

/** How many bounds were missed. */
export function benchRuleTexts(): number {
  const lengths = [LONGEST, LONGEST / 10];
  const medians = timed(
    [
      ...PIECES.flatMap((piece) =>
        lengths.map((length) => reading(piece, length, 20, (text) => Number(parseRule(text).ok))),
      ),
      ...[160_000, 16_000].map((length) => reading(CUT, length, 1, (text) => cutTokens(text).length)),
      reading("a", 1_000_000, 20, (text) => Number(parseRule(text).ok)),
    ],
    51,
  ).map((nanoseconds) => nanoseconds / 1e6);
  const at = (n: number): number => medians[n] ?? Number.NaN;
  const rows = PIECES.map((piece, n) => ({ piece, ms: at(2 * n), times: at(2 * n) / at(2 * n + 1) }));
  const slowest = largest(rows, ({ ms }) => ms);
  const steepest = largest(rows, ({ times }) => times);
  const [cutLong, cutShort, refused] = [0, 1, 2].map((n) => at(2 * PIECES.length + n));
  return boundedTable("rule texts, medians", [
    {
      name: `${LONGEST} characters of ${JSON.stringify(slowest?.piece)}, the slowest of ${PIECES.length}`,
      value: slowest?.ms ?? Number.NaN,
      unit: "ms",
      most: MOST_MS,
    },
    {
      name: `ten times the text of ${JSON.stringify(steepest?.piece)}, the steepest`,
      value: steepest?.times ?? Number.NaN,
      unit: "times",
      most: MOST_TIMES,
      beside: "10 in proportion, 100 by squares",
    },
    {
      name: "ten times 16 000 characters cut into pieces",
      value: (cutLong ?? Number.NaN) / (cutShort ?? Number.NaN),
      unit: "times",
      most: MOST_TIMES,
      beside: `${(cutShort ?? Number.NaN).toFixed(2)} and ${(cutLong ?? Number.NaN).toFixed(1)} ms`,
    },
    { name: "a million characters refused", value: refused ?? Number.NaN, unit: "ms", most: MOST_MS },
  ]);
}

function reading(piece: string, length: number, size: number, once: (text: string) => number) {
  const text = piece.repeat(Math.ceil(length / piece.length)).slice(0, length);
  const run = (): number => {
    let sum = 0;
    for (let n = 0; n < size; n += 1) sum += once(text);
    return sum;
  };
  return { name: piece, size, run };
}
