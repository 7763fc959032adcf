import type { Frame } from "./frame.ts";
import { canVanish, shareOfOthers } from "./third.ts";

/**
 * Whiskeys that may still join a support whose first `prefix` are chosen: for each its row of the Cholesky factor of M (`z`), what is
 * left of its diagonal (`rest`: M(k,k) less the squares of the row), and M(k,k) itself (`whole`).
 */
export type Level = {
  prefix: readonly number[];
  size: number;
  readonly place: Int32Array;
  readonly z: Float64Array[];
  readonly rest: Float64Array;
  readonly whole: Float64Array;
};

/** Levels come and go by the thousand: their arrays are used again. */
export class Levels {
  readonly #n: number;
  readonly #free: Level[] = [];

  constructor(n: number) {
    this.#n = n;
  }

  take(prefix: readonly number[]): Level {
    const n = this.#n;
    const level = this.#free.pop() ?? {
      prefix,
      size: 0,
      place: new Int32Array(n),
      z: [],
      rest: new Float64Array(n),
      whole: new Float64Array(n),
    };
    level.prefix = prefix;
    while (level.z.length < prefix.length) level.z.push(new Float64Array(n));
    return level;
  }

  give(level: Level): void {
    this.#free.push(level);
  }
}

/** M(k,k) of every whiskey of a level with nothing chosen, for the frame's present threshold. */
export function setDiagonal(frame: Frame, gram: Float64Array, level: Level): void {
  const { alpha, beta } = frame;
  const n = beta.length;
  for (let x = 0; x < level.size; x += 1) {
    const k = level.place[x]!;
    level.rest[x] = level.whole[x] = gram[k * n + k]! - beta[k]! * beta[k]! + 2 * alpha[k]!;
  }
}

export function rootLevel(frame: Frame, gram: Float64Array, among: Int32Array, levels: Levels): Level {
  const level = levels.take([]);
  level.size = among.length;
  level.place.set(among);
  setDiagonal(frame, gram, level);
  return level;
}

/** Takes the whiskey at `x` out; the others keep their order. */
export function takeOut(level: Level, x: number): void {
  const { size, place, rest, whole, z, prefix } = level;
  for (const list of [place, rest, whole, ...z.slice(0, prefix.length)]) list.copyWithin(x, x + 1, size);
  level.size -= 1;
}

/**
 * The level with the whiskeys at `x` and `y` of `above` chosen too: two steps of Cholesky's method. Whiskeys that may not stand
 * with either are left out: their entry in `pairs` is NaN, and so are the chosen ones' own. So are those that could not bring the
 * two and `more` - 1 others, no two of them more opposed than `frame.floor`, down to the threshold.
 */
export function levelBelow(
  frame: Frame,
  pairs: Float64Array,
  above: Level,
  x: number,
  y: number,
  more: number,
  levels: Levels,
): Level {
  const { alpha, beta } = frame;
  const n = beta.length;
  const { size, rest, z } = above;
  const dim = above.prefix.length;
  const i = above.place[x]!;
  const j = above.place[y]!;
  const below = levels.take([...above.prefix, i, j]);
  const own = [below.z[dim]!, below.z[dim + 1]!] as const;
  let ij = pairs[i * n + j]! - beta[i]! * beta[j]! + alpha[i]! + alpha[j]!;
  for (let r = 0; r < dim; r += 1) ij -= z[r]![x]! * z[r]![y]!;
  const rootI = Math.sqrt(rest[x]!);
  const zij = ij / rootI;
  const rootJ = Math.sqrt(rest[y]! - zij * zij);
  const share = dim === 0 && frame.floor > -1 ? shareOfOthers(frame.floor, more - 1) : Infinity;
  const lengthI = 1 / Math.sqrt(above.whole[x]!);
  const lengthJ = 1 / Math.sqrt(above.whole[y]!);
  const cosine = ij * lengthI * lengthJ;
  const bi = beta[i]!;
  const bj = beta[j]!;
  const ai = alpha[i]!;
  const aj = alpha[j]!;
  const rowI = i * n;
  const rowJ = j * n;
  let m = 0;
  for (let w = 0; w < size; w += 1) {
    const k = above.place[w]!;
    const shift = alpha[k]!;
    let ik = pairs[rowI + k]! - bi * beta[k]! + ai + shift;
    let jk = pairs[rowJ + k]! - bj * beta[k]! + aj + shift;
    if (Number.isNaN(ik + jk)) continue;
    if (share < 1) {
      const length = 1 / Math.sqrt(above.whole[w]!);
      if (!canVanish(cosine, ik * lengthI * length, jk * lengthJ * length, share)) continue;
    }
    for (let r = 0; r < dim; r += 1) {
      const row = z[r]!;
      const zk = row[w]!;
      ik -= row[x]! * zk;
      jk -= row[y]! * zk;
      below.z[r]![m] = zk;
    }
    const zi = ik / rootI;
    const zj = (jk - zij * zi) / rootJ;
    below.place[m] = k;
    own[0][m] = zi;
    own[1][m] = zj;
    below.rest[m] = rest[w]! - zi * zi - zj * zj;
    below.whole[m] = above.whole[w]!;
    m += 1;
  }
  below.size = m;
  return below;
}
