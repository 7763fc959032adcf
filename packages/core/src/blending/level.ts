import type { Frame } from "./frame.ts";

/**
 * Whiskeys that may still join a support whose first `prefix` are chosen: for each its row of the Cholesky factor of M (`z`), what is
 * left of its diagonal (`rest`: M(k,k) less the squares of the row), and M(k,k) itself (`whole`).
 */
export type Level = {
  readonly prefix: readonly number[];
  size: number;
  readonly place: Int32Array;
  readonly z: readonly Float64Array[];
  readonly rest: Float64Array;
  readonly whole: Float64Array;
};

/** M(k,k) of every whiskey of a level with nothing chosen, for the frame's present threshold. */
export function setDiagonal(frame: Frame, gram: Float64Array, level: Level): void {
  const { alpha, beta } = frame;
  const n = beta.length;
  for (let x = 0; x < level.size; x += 1) {
    const k = level.place[x]!;
    level.rest[x] = level.whole[x] = gram[k * n + k]! - beta[k]! * beta[k]! + 2 * alpha[k]!;
  }
}

export function rootLevel(frame: Frame, gram: Float64Array, among: Int32Array): Level {
  const size = among.length;
  const level = {
    prefix: [],
    size,
    place: among.slice(),
    z: [],
    rest: new Float64Array(size),
    whole: new Float64Array(size),
  };
  setDiagonal(frame, gram, level);
  return level;
}

/** Takes the whiskey at `x` out; the last one takes its place. */
export function takeOut(level: Level, x: number): void {
  level.size -= 1;
  const last = level.size;
  level.place[x] = level.place[last]!;
  level.rest[x] = level.rest[last]!;
  level.whole[x] = level.whole[last]!;
  for (const row of level.z) row[x] = row[last]!;
}

/**
 * The level with the whiskey at `x` of `above` chosen too: one step of Cholesky's method. Whiskeys that may not stand with it are
 * left out: their entry in `pairs` is NaN, and so is its own.
 */
export function levelBelow(frame: Frame, pairs: Float64Array, above: Level, x: number): Level {
  const { alpha, beta } = frame;
  const { size } = above;
  const dim = above.z.length;
  const place = new Int32Array(size);
  const rest = new Float64Array(size);
  const whole = new Float64Array(size);
  const z = Array.from({ length: dim + 1 }, () => new Float64Array(size));
  const own = z[dim]!;
  const i = above.place[x]!;
  const root = Math.sqrt(above.rest[x]!);
  let m = 0;
  for (let w = 0, at = i * beta.length; w < size; w += 1) {
    const k = above.place[w]!;
    let left = pairs[at + k]! - beta[i]! * beta[k]! + alpha[i]! + alpha[k]!;
    if (Number.isNaN(left)) continue;
    for (let r = 0; r < dim; r += 1) {
      const row = above.z[r]!;
      left -= row[x]! * row[w]!;
      z[r]![m] = row[w]!;
    }
    const zk = left / root;
    place[m] = k;
    own[m] = zk;
    rest[m] = above.rest[w]! - zk * zk;
    whole[m] = above.whole[w]!;
    m += 1;
  }
  return { prefix: [...above.prefix, i], size: m, place, z, rest, whole };
}
