import { symmetricEigen } from "../numeric/index.ts";

export type Point = readonly [number, number];

/** An ellipse: centre, half axes (longer first) and the angle of the longer one from the first component, in radians. */
export interface Ellipse {
  readonly centre: Point;
  readonly axes: Point;
  readonly angle: number;
}

/** `from` turned (and mirrored, if need be) onto `onto`: orthogonal Procrustes in the plane. */
export function turnedOnto(from: readonly Point[], onto: readonly Point[]): Point[] {
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

/** Covariance of clouds of points, each about its own mean, put together. */
export function pooledCovariance(clouds: readonly (readonly Point[])[]): number[][] {
  const moment = (i: 0 | 1, j: 0 | 1): number =>
    clouds.reduce((all, cloud) => {
      const mean = (pick: 0 | 1): number => cloud.reduce((sum, point) => sum + point[pick], 0) / cloud.length;
      const [mi, mj] = [mean(i), mean(j)];
      return all + cloud.reduce((sum, point) => sum + (point[i] - mi) * (point[j] - mj), 0) / cloud.length;
    }, 0) / clouds.length;
  return [
    [moment(0, 0), moment(0, 1)],
    [moment(0, 1), moment(1, 1)],
  ];
}

/** The half axes and angle of the ellipse that reaches `reach` standard deviations of a covariance. */
export function shapeOf(
  covariance: readonly (readonly number[])[],
  reach: number,
): Pick<Ellipse, "axes" | "angle"> {
  const { values, vectors } = symmetricEigen(covariance);
  const axis = (i: 0 | 1): number => reach * Math.sqrt(Math.max(0, values[i] ?? 0));
  return { axes: [axis(0), axis(1)], angle: Math.atan2(vectors[0]?.[1] ?? 0, vectors[0]?.[0] ?? 1) };
}

/** Whether a point lies in an ellipse. */
export function inEllipse({ centre, axes, angle }: Ellipse, [x, y]: Point): boolean {
  const [dx, dy] = [x - centre[0], y - centre[1]];
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  const part = (along: number, axis: number): number =>
    axis > 0 ? (along / axis) ** 2 : along === 0 ? 0 : Infinity;
  return part(dx * c + dy * s, axes[0]) + part(dy * c - dx * s, axes[1]) <= 1;
}
