import { symmetricEigen } from "../numeric/index.ts";
import { type Ellipse, pooledCovariance, type Point, shapeOf, turnedOnto } from "./ellipse.ts";
import { type NumberTable, requireTable } from "./number-table.ts";
import type { Rng } from "./rng.ts";
import { fQuantile } from "./student-and-f-laws.ts";

export interface Correspondence {
  /** Principal inertias, the largest first; their sum times the total count is chi-square. */
  readonly inertia: readonly number[];
  readonly shares: readonly number[];
  /** Principal coordinates of the rows: where rows are used alike they lie together. */
  readonly rows: readonly (readonly number[])[];
  /** Standard coordinates of the columns: a row lies at the mean of those of its own counts. */
  readonly columns: readonly (readonly number[])[];
}

const sumOf = (list: readonly number[]): number => list.reduce((sum, x) => sum + x, 0);

/**
 * Correspondence analysis of a table of counts: the places of rows and columns whose distances are those of chi-square.
 *
 * Accuracy: inertias and coordinates absolute 1e-12 (reference test). Source: Greenacre, Theory and Applications of Correspondence
 * Analysis, 1984 (from memory).
 *
 * @param axes how many are wanted, at most one less than the smaller side
 * @throws RangeError with fewer than 2 rows or columns, a count below 0, an empty row or column, or axes out of that range
 * @example correspondence([[4, 2], [1, 5]], 1).inertia
 */
export function correspondence(counts: NumberTable, axes: number): Correspondence {
  requireTable("correspondence", counts, 2, 2);
  const width = counts[0]?.length ?? 0;
  const most = Math.min(counts.length, width) - 1;
  if (!Number.isInteger(axes) || axes < 1 || axes > most)
    throw new RangeError(`correspondence requires 1 to ${most} axes, got ${axes}`);
  const bad = counts.flat().find((x) => x < 0);
  if (bad !== undefined) throw new RangeError(`correspondence requires counts >= 0, got ${bad}`);
  const rowSums = counts.map(sumOf);
  const columnSums = Array.from({ length: width }, (_, j) => sumOf(counts.map((row) => row[j] as number)));
  for (const [what, sums] of [
    ["row", rowSums],
    ["column", columnSums],
  ] as const) {
    const empty = sums.indexOf(0);
    if (empty >= 0)
      throw new RangeError(`correspondence requires a count in every ${what}, got none in ${what} ${empty}`);
  }
  const total = sumOf(rowSums);
  const mass = (sums: readonly number[], i: number): number => (sums[i] as number) / total;
  const residual = counts.map((row, i) =>
    row.map((x, j) => {
      const expected = mass(rowSums, i) * mass(columnSums, j);
      return (x / total - expected) / Math.sqrt(expected);
    }),
  );
  // The smaller side's cross products have the same eigenvalues; the columns' vectors give both.
  const cross = columnSums.map((_, j) =>
    columnSums.map((__, k) => sumOf(residual.map((row) => (row[j] as number) * (row[k] as number)))),
  );
  const { values, vectors } = symmetricEigen(cross);
  const inertia = values.slice(0, most).map((x) => Math.max(0, x));
  const all = sumOf(inertia);
  const columns = columnSums.map((_, j) =>
    Array.from({ length: axes }, (__, a) => (vectors[a]?.[j] as number) / Math.sqrt(mass(columnSums, j))),
  );
  return {
    inertia,
    shares: inertia.map((x) => (all === 0 ? 0 : x / all)),
    rows: counts.map((row) => placed(row, columns)),
    columns,
  };
}

/** Where a row of counts lies among columns in standard coordinates: the mean of their places. */
function placed(row: readonly number[], columns: readonly (readonly number[])[]): number[] {
  const total = sumOf(row);
  return (columns[0] ?? []).map((_, a) =>
    sumOf(row.map((x, j) => (x / total) * (columns[j]?.[a] as number))),
  );
}

export interface CountMap extends Correspondence {
  /** One a row: where it might lie had other judges of this kind counted; null where too few draws have it. */
  readonly ellipses: readonly (Ellipse | null)[];
  readonly level: number;
}

const RESAMPLES = 500;

/**
 * A map of rows by all judges' counts together, with how sure each place is: correspondence analysis in the plane, and ellipses from
 * drawing the judges again and again, each map turned onto the first (Procrustes), so that what only looks like movement is out.
 *
 * `counts[j][i][w]`: how often judge j used w of row i. Each row has a cloud of its own, as what is counted less often scatters more; it is
 * widened as in `itemMap`. With few judges chance itself draws rows apart: the test prints how often the ellipses hold the place of a
 * panel without end.
 *
 * @throws RangeError with fewer than 3 judges, 3 rows or 3 columns, tables of other sizes, or as `correspondence`
 * @example countMap(counts, repeatableRng(6)).ellipses[0]
 */
export function countMap(counts: readonly NumberTable[], rng: Rng, level = 0.95): CountMap {
  if (counts.length < 3) throw new RangeError(`countMap requires 3 judges or more, got ${counts.length}`);
  if (!(level > 0 && level < 1)) throw new RangeError(`countMap requires 0 < level < 1, got ${level}`);
  const [rows, width] = [counts[0]?.length ?? 0, counts[0]?.[0]?.length ?? 0];
  for (const [judge, table] of counts.entries()) {
    requireTable(`countMap, judge ${judge},`, table, 3, 3);
    if (table.length !== rows || table[0]?.length !== width) {
      throw new RangeError(
        `countMap requires ${rows} rows of ${width} counts from judge ${judge}, got ${table.length} of ${table[0]?.length}`,
      );
    }
  }
  const together = (judges: readonly NumberTable[], i: number): number[] =>
    Array.from({ length: width }, (_, w) => sumOf(judges.map((table) => table[i]?.[w] as number)));
  const whole = correspondence(
    Array.from({ length: rows }, (_, i) => together(counts, i)),
    2,
  );
  const plane = (list: readonly (readonly number[])[]): Point[] =>
    list.map(([x = 0, y = 0]) => [x, y] as const);
  const onto = plane(whole.rows);
  const clouds: Point[][] = onto.map(() => []);
  for (let draw = 0; draw < RESAMPLES; draw += 1) {
    const drawn = counts.map(() => counts[rng.below(counts.length)] as NumberTable);
    const table = onto.map((_, i) => together(drawn, i));
    // Words that nobody drawn used say nothing; a row without words has no place.
    const words = Array.from({ length: width }, (_, w) => w).filter((w) =>
      table.some((row) => (row[w] ?? 0) > 0),
    );
    if (words.length < 3 || table.some((row) => sumOf(row) === 0)) continue;
    const again = correspondence(
      table.map((row) => words.map((w) => row[w] as number)),
      2,
    );
    for (const [i, point] of turnedOnto(plane(again.rows), onto).entries()) clouds[i]?.push(point);
  }
  const n = counts.length;
  const df = n - 1;
  const reach = Math.sqrt((n / (n - 1)) * ((2 * df) / (df - 1)) * fQuantile(level, 2, df - 1));
  const ellipses = whole.rows.map(([x = 0, y = 0], i): Ellipse | null => {
    const cloud = clouds[i] ?? [];
    if (cloud.length < 0.9 * RESAMPLES) return null;
    return { centre: [x, y], ...shapeOf(pooledCovariance([cloud]), reach) };
  });
  return { ...whole, ellipses, level };
}
