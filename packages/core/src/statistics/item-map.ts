import { type Ellipse, pooledCovariance, type Point, shapeOf, turnedOnto } from "./ellipse.ts";
import { type NumberTable, requireTable } from "./number-table.ts";
import { type PrincipalComponents, principalComponents } from "./principal-components.ts";
import type { Rng } from "./rng.ts";
import { fQuantile } from "./student-and-f-laws.ts";

export interface ItemMap extends PrincipalComponents {
  /** One an item: where it might lie had other judges of this kind tasted. */
  readonly ellipses: readonly Ellipse[];
  readonly level: number;
}

const RESAMPLES = 500;

/**
 * A map of items by their judges' mean profiles, with how sure each place is: the first two principal components, and ellipses from
 * drawing the judges again and again, each map turned onto the first (Procrustes).
 *
 * `scores[j][i][a]`: judge j's score of item i on attribute a, all on one scale. Turning takes out what only looks like movement. The
 * judges' scatter is taken to be alike for all items: the clouds are put together into one shape, widened by √(n/(n − 1)) for n judges
 * and by Hotelling's law with (n − 1)·(items − 1) degrees of freedom for what so few can say about scatter. With few judges the axes
 * themselves are unsure and the ellipses are still somewhat too small: see the coverage that the test prints. They are about each item
 * by itself, not about the difference of two.
 *
 * Sources, from memory: Gower, Psychometrika 40 (1975) 33; Efron and Tibshirani, An Introduction to the Bootstrap, 1993.
 *
 * @throws RangeError with fewer than 2 judges, 3 items or 2 attributes, or tables of other sizes
 * @example itemMap(scores, repeatableRng(6)).ellipses[0]
 */
export function itemMap(scores: readonly NumberTable[], rng: Rng, level = 0.95): ItemMap {
  if (scores.length < 2) throw new RangeError(`itemMap requires 2 judges or more, got ${scores.length}`);
  if (!(level > 0 && level < 1)) throw new RangeError(`itemMap requires 0 < level < 1, got ${level}`);
  const [items, width] = [scores[0]?.length ?? 0, scores[0]?.[0]?.length ?? 0];
  scores.forEach((table, judge) => {
    requireTable(`itemMap, judge ${judge},`, table, 3, 2);
    if (table.length !== items || table[0]?.length !== width) {
      throw new RangeError(
        `itemMap requires ${items} items of ${width} attributes from judge ${judge}, got ${table.length} of ${table[0]?.length}`,
      );
    }
  });
  const meanOf = (judges: readonly NumberTable[]): number[][] =>
    Array.from({ length: items }, (_, i) =>
      Array.from(
        { length: width },
        (__, a) => judges.reduce((sum, table) => sum + (table[i]?.[a] as number), 0) / judges.length,
      ),
    );
  const plane = (table: NumberTable): Point[] =>
    principalComponents(table, 2).scores.map(([x = 0, y = 0]) => [x, y] as const);
  const whole = principalComponents(meanOf(scores), 2);
  const onto = whole.scores.map(([x = 0, y = 0]) => [x, y] as const);
  const clouds: Point[][] = onto.map(() => []);
  for (let i = 0; i < RESAMPLES; i += 1) {
    const drawn = scores.map(() => scores[rng.below(scores.length)] as NumberTable);
    turnedOnto(plane(meanOf(drawn)), onto).forEach((point, item) => clouds[item]?.push(point));
  }
  const n = scores.length;
  const df = (n - 1) * (items - 1);
  const reach = Math.sqrt((n / (n - 1)) * ((2 * df) / (df - 1)) * fQuantile(level, 2, df - 1));
  const shape = shapeOf(pooledCovariance(clouds), reach);
  return { ...whole, ellipses: onto.map((centre) => ({ centre, ...shape })), level };
}
