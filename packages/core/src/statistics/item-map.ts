import { symmetricEigen } from "../numeric/index.ts";
import { type NumberTable, requireTable } from "./number-table.ts";
import { type PrincipalComponents, principalComponents } from "./principal-components.ts";
import type { Rng } from "./rng.ts";

type Point = readonly [number, number];

/** An ellipse: centre, half axes (longer first) and the angle of the longer one from the first component, in radians. */
export interface Ellipse {
  readonly centre: Point;
  readonly axes: Point;
  readonly angle: number;
}

export interface ItemMap extends PrincipalComponents {
  /** One an item: where it might lie had other judges of this kind tasted. */
  readonly ellipses: readonly Ellipse[];
  readonly level: number;
}

const RESAMPLES = 500;

/** `from` turned (and mirrored, if need be) onto `onto`: orthogonal Procrustes in the plane. */
function turnedOnto(from: readonly Point[], onto: readonly Point[]): Point[] {
  let [xx, xy, yx, yy] = [0, 0, 0, 0];
  from.forEach(([x, y], i) => {
    const [u, v] = onto[i] as Point;
    xx += x * u;
    xy += x * v;
    yx += y * u;
    yy += y * v;
  });
  // A turn gains √((xx + yy)² + (xy − yx)²), a mirrored turn √((xx − yy)² + (xy + yx)²).
  const mirrored = Math.hypot(xx - yy, xy + yx) > Math.hypot(xx + yy, xy - yx);
  const sign = mirrored ? -1 : 1;
  const turn = Math.atan2(xy - sign * yx, xx + sign * yy);
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  return from.map(([x, y]) => [c * x - s * sign * y, s * x + c * sign * y] as const);
}

/** The ellipse of a cloud's own shape that holds `level` of it, widened for having drawn from few judges. */
function ellipseOf(cloud: readonly Point[], level: number, widen: number): Ellipse {
  const mean = (pick: 0 | 1): number => cloud.reduce((sum, point) => sum + point[pick], 0) / cloud.length;
  const centre: Point = [mean(0), mean(1)];
  const moment = (i: 0 | 1, j: 0 | 1): number =>
    cloud.reduce((sum, point) => sum + (point[i] - centre[i]) * (point[j] - centre[j]), 0) / cloud.length;
  const { values, vectors } = symmetricEigen([
    [moment(0, 0), moment(0, 1)],
    [moment(0, 1), moment(1, 1)],
  ]);
  const sds = values.map((x) => Math.sqrt(Math.max(0, x)));
  const [along, across] = vectors as readonly [Point, Point];
  const reach = cloud
    .map(([x, y]) => {
      const [dx, dy] = [x - centre[0], y - centre[1]];
      const part = (vector: Point, sd = 0): number =>
        sd > 0 ? ((dx * vector[0] + dy * vector[1]) / sd) ** 2 : 0;
      return Math.sqrt(part(along, sds[0]) + part(across, sds[1]));
    })
    .toSorted((a, b) => a - b);
  const far = (reach[Math.min(reach.length - 1, Math.floor(level * reach.length))] as number) * widen;
  return { centre, axes: [far * (sds[0] ?? 0), far * (sds[1] ?? 0)], angle: Math.atan2(along[1], along[0]) };
}

/**
 * A map of items by their judges' mean profiles, with how sure each place is: the first two principal components, and ellipses from
 * drawing the judges again and again, each map turned onto the first (Procrustes).
 *
 * `scores[j][i][a]`: judge j's score of item i on attribute a, all on one scale. Turning takes out what only looks like movement; the
 * ellipses are widened by √(n/(n − 1)) for n judges, and with few judges are still too small: see the coverage that the test prints.
 * They are about each item by itself, not about the difference of two.
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
  const widen = Math.sqrt(scores.length / (scores.length - 1));
  return { ...whole, ellipses: clouds.map((cloud) => ellipseOf(cloud, level, widen)), level };
}

/** Whether a point lies in an ellipse. */
export function inEllipse({ centre, axes, angle }: Ellipse, [x, y]: Point): boolean {
  const [dx, dy] = [x - centre[0], y - centre[1]];
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  const part = (along: number, axis: number): number =>
    axis > 0 ? (along / axis) ** 2 : along === 0 ? 0 : Infinity;
  return part(dx * c + dy * s, axes[0]) + part(dy * c - dx * s, axes[1]) <= 1;
}
