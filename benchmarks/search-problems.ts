import type { Problem, ShelfWhiskey } from "@partsproof/core/blending";
import { abv20 } from "@partsproof/core/quantity";

// Made-up shelves and targets for timing, the same every run.

export const KINDS = ["clustered shelf", "spread shelf", "target outside the hull"] as const;
export type Kind = (typeof KINDS)[number];

/** xorshift32 (Marsaglia 2003): 0 up to 1. */
function chance(seed: number): () => number {
  let state = (seed * 2_654_435_761) >>> 0 || 1;
  const next = (): number => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) / 2 ** 32;
  };
  for (let warm = 0; warm < 20; warm += 1) next();
  return next;
}

const clip = (x: number): number => Math.min(10, Math.max(0, x));

/**
 * Profiles and target, `d` attributes of 0 to 10.
 * Clustered: ten styles drawn evenly, each whiskey a style with a spread of 1.2; the target the mean of six whiskeys with a spread
 * of 0.5, so that it mostly lies inside the hull.
 * Spread: every intensity drawn evenly; the target about the middle with a spread of 1.5: inside the hull, the hard case.
 * Outside: even seeds as spread, but the target drawn like a whiskey, which in 24 dimensions lies outside the hull of 500; odd seeds a
 * middling shelf (4 with a spread of 2) and a target with every attribute near an end of the scale.
 */
export function drawn(
  kind: Kind,
  n: number,
  d: number,
  seed: number,
): { shelf: number[][]; target: number[] } {
  const random = chance(seed * 64 + KINDS.indexOf(kind));
  const normal = (): number => Math.sqrt(-2 * Math.log(random() + 1e-12)) * Math.cos(2 * Math.PI * random());
  const row = (draw: (a: number) => number): number[] => Array.from({ length: d }, (_, a) => clip(draw(a)));
  const rows = (draw: () => number[]): number[][] => Array.from({ length: n }, draw);
  const even = (): number => 10 * random();
  if (kind === "clustered shelf") {
    const styles = Array.from({ length: 10 }, () => row(even));
    const shelf = rows(() => {
      const style = styles[Math.floor(10 * random())] ?? [];
      return row((a) => (style[a] ?? 0) + 1.2 * normal());
    });
    const six = Array.from({ length: 6 }, () => shelf[Math.floor(n * random())] ?? []);
    const target = row((a) => six.reduce((sum, one) => sum + (one[a] ?? 0) / 6, 0) + 0.5 * normal());
    return { shelf, target };
  }
  if (kind === "spread shelf") return { shelf: rows(() => row(even)), target: row(() => 5 + 1.5 * normal()) };
  if (seed % 2 === 0) return { shelf: rows(() => row(even)), target: row(even) };
  return {
    shelf: rows(() => row(() => 4 + 2 * normal())),
    target: row(() => (random() < 0.5 ? 9 : 1) + normal()),
  };
}

export function problemOf(
  { shelf, target }: { shelf: number[][]; target: number[] },
  others: Partial<Problem> = {},
): Problem {
  const profile = (row: readonly number[]): Record<string, number> =>
    Object.fromEntries(row.map((value, a) => [`a${a}`, value]));
  const whiskeys = shelf.map(
    (row, i): ShelfWhiskey => ({ id: `w${i}`, abv20: abv20(40 + (i % 20)), profile: profile(row) }),
  );
  return {
    whiskeys,
    target: { profile: profile(target) },
    maxBottles: 4,
    maxParts: 12,
    rules: [],
    ...others,
  };
}
