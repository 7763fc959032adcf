import { rootByBrent } from "../numeric/index.ts";
import { type Interval, missEachEnd } from "./interval.ts";
import { knownLaws } from "./known-law.ts";
import type { LabelCounts } from "./match-law.ts";

/** One labelling: the objects' true labels, the slots offered, and how many were right. */
export interface Labelling {
  readonly rows: LabelCounts;
  readonly columns: LabelCounts;
  readonly right: number;
}

export interface KnownCount {
  /** The number known that makes the observed count most likely; the smallest of equals. */
  readonly mostLikely: number;
  /** All numbers known that the observed count does not refute, at either end. */
  readonly interval: Interval;
}

/**
 * How many of the objects somebody truly knew, from the number labelled right: the rest may have been luck.
 *
 * The interval inverts exact tails: it holds the K for which neither "so many right or more" nor "so many or fewer" is rarer than
 * (1 − level)/2. It covers the true number with at least `level`.
 *
 * @throws RangeError when more are right than there are objects, or as `knownLaws`
 * @example
 * const five = { a: 1, b: 1, c: 1, d: 1, e: 1 };
 * knownCount({ rows: five, columns: five, right: 3 }) // { mostLikely: 2, interval: { low: 0, high: 3 } }
 */
export function knownCount({ rows, columns, right }: Labelling, level = 0.95): KnownCount {
  const miss = missEachEnd(level, "both");
  const laws = knownLaws({ rows, columns });
  if (!Number.isInteger(right) || right < 0 || right > laws.length - 1) {
    throw new RangeError(`knownCount requires 0 to ${laws.length - 1} right, got ${right}`);
  }
  const sum = (law: readonly number[], from: number, to: number): number =>
    law.slice(from, to).reduce((total, p) => total + p, 0);
  const kept = laws.flatMap((law, known) =>
    sum(law, right, law.length) > miss && sum(law, 0, right + 1) > miss ? [known] : [],
  );
  const chances = laws.map((law) => law[right] ?? 0);
  const most = Math.max(...chances);
  if (most === 0) throw new RangeError(`knownCount requires a count that can come up, got ${right} right`);
  // Laws that are equal but for rounding count as equal.
  return {
    mostLikely: chances.findIndex((p) => p >= most * (1 - 1e-12)),
    interval: { low: kept[0] ?? right, high: kept.at(-1) ?? right },
  };
}

export interface KnownShare {
  /** Most likely share of objects truly known, 0 to 1. */
  readonly share: number;
  readonly interval: Interval;
  /** The same as a number of objects over all labellings. */
  readonly known: number;
}

const convolved = (a: readonly number[], b: readonly number[]): number[] => {
  const product = Array.from({ length: a.length + b.length - 1 }, () => 0);
  a.forEach((x, i) => b.forEach((y, j) => (product[i + j] = (product[i + j] as number) + x * y)));
  return product;
};

/** The law of K known among n, each known with chance `share`. */
function knowing(n: number, share: number): number[] {
  let law = [1];
  for (let i = 0; i < n; i += 1) law = convolved(law, [1 - share, share]);
  return law;
}

/**
 * The share of objects truly known over several labellings, from the total number right.
 *
 * Model: every object is known with the same chance, independently, and the rest are labelled at random. The interval inverts the
 * exact tails of the total (Clopper and Pearson's way): under that model it covers the true share with at least `level`.
 *
 * Accuracy: absolute 1e-10.
 *
 * @throws RangeError when there is no object, or as `knownCount`
 * @example knownShare([sheet, sheet], 0.95).share
 */
export function knownShare(labellings: readonly Labelling[], level = 0.95): KnownShare {
  const miss = missEachEnd(level, "both");
  const sheets = labellings.map(({ rows, columns }) => knownLaws({ rows, columns }));
  const objects = sheets.reduce((sum, laws) => sum + laws.length - 1, 0);
  const right = labellings.reduce((sum, sheet) => sum + sheet.right, 0);
  if (objects === 0) throw new RangeError("knownShare requires at least 1 object, got 0");
  if (!Number.isInteger(right) || right < 0 || right > objects) {
    throw new RangeError(`knownShare requires 0 to ${objects} right, got ${right}`);
  }
  const total = (share: number): number[] =>
    sheets
      .map((laws) => {
        const weights = knowing(laws.length - 1, share);
        return (
          laws[0]?.map((_, j) =>
            laws.reduce((sum, law, k) => sum + (weights[k] ?? 0) * (law[j] ?? 0), 0),
          ) ?? [1]
        );
      })
      .reduce(convolved, [1]);
  const tail = (share: number, from: number, to: number): number =>
    total(share)
      .slice(from, to)
      .reduce((sum, p) => sum + p, 0);
  const atLeast = (share: number): number => tail(share, right, objects + 1) - miss;
  const atMost = (share: number): number => tail(share, 0, right + 1) - miss;
  const share = mostLikely((x) => total(x)[right] ?? 0);
  return {
    share,
    interval: {
      low: atLeast(0) >= 0 ? 0 : rootByBrent(atLeast, 0, 1, 1e-12),
      // So few right refute even that nothing is known: nothing is left but nothing.
      high: atMost(1) >= 0 ? 1 : atMost(0) <= 0 ? 0 : rootByBrent(atMost, 0, 1, 1e-12),
    },
    known: share * objects,
  };
}

/** Where a smooth function of a share is largest: a look round, then golden sections. */
function mostLikely(f: (x: number) => number): number {
  const steps = 40;
  const values = Array.from({ length: steps + 1 }, (_, i) => f(i / steps));
  const best = values.indexOf(Math.max(...values));
  let [low, high] = [Math.max(0, best - 1) / steps, Math.min(steps, best + 1) / steps];
  const golden = (Math.sqrt(5) - 1) / 2;
  while (high - low > 1e-8) {
    const [a, b] = [high - golden * (high - low), low + golden * (high - low)];
    if (f(a) >= f(b)) high = b;
    else low = a;
  }
  const middle = (low + high) / 2;
  return [0, middle, 1].reduce((top, x) => (f(x) > f(top) ? x : top), middle);
}
