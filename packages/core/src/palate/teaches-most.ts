import type { LearnedLevels } from "./learn-levels.ts";
import { placedParts } from "./placed-parts.ts";

/** A glass that could be poured: amounts by whiskey. */
export interface Pourable {
  readonly id: string;
  readonly parts: Readonly<Record<string, number>>;
}

/** What one more note of a glass is expected to teach. */
export interface Taught {
  readonly id: string;
  /** Share that it takes off the sum of all variances, 0 to 1. */
  readonly share: number;
  /** How far off its own level is, root mean square over what a note may speak of: now, and once a note has spoken of it. */
  readonly own: { readonly before: number; readonly after: number };
  /** Root mean variance of a level after it, and how much of what it teaches is about each whiskey and attribute, most first. */
  readonly after: number;
  readonly whiskeys: readonly { readonly id: string; readonly share: number }[];
  readonly attributes: readonly { readonly id: string; readonly share: number }[];
}

export interface TeachesMost {
  /** Most first; those that teach alike by their ids. */
  readonly glasses: readonly Taught[];
  /** Root mean variance of a level now. */
  readonly before: number;
}

/**
 * Which glass's next note would teach most: takes most off the sum of the variances of all levels of the whiskeys `about`, by the law of
 * normal numbers. The note is one by a taster who uses the scale as the table does, off by what notes of this table are off; it speaks of
 * each attribute as often as notes did so far. Only attributes that somebody has spoken of count.
 *
 * What a note takes off a variance does not depend on what it says, so that this is no guess but for what it speaks of.
 *
 * @throws RangeError on a glass of none of the whiskeys
 * @example teachesMost(learnLevels(whiskeys, notes), [{ id: "rye", parts: { rye: 1 } }], ["rye", "malt"]).glasses[0].share // 0.04
 */
export function teachesMost(
  learned: LearnedLevels,
  glasses: readonly Pourable[],
  about: readonly string[],
): TeachesMost {
  const { whiskeys, attributes } = learned;
  const count = whiskeys.length;
  const wanted = about.map((id) => whiskeys.indexOf(id)).filter((i) => i >= 0);
  let now = 0;
  for (const { covariance } of attributes) for (const i of wanted) now += covariance[i * count + i] as number;
  const levels = Math.max(1, wanted.length * attributes.length);
  const found = glasses.map(({ id, parts }): Taught => {
    const { shares, strays } = placedParts(learned, parts);
    const byWhiskey = new Map<string, number>();
    let all = 0;
    let [weights, unknown, left] = [0, 0, 0];
    const byAttribute = attributes.map(({ id: attribute, covariance, spoken, noteVariance }) => {
      const withGlass = wanted.map((i) =>
        shares.reduce((sum, [j, share]) => sum + share * (covariance[i * count + j] as number), 0),
      );
      const own = shares.reduce(
        (sum, [i, share]) =>
          shares.reduce((part, [j, by]) => part + share * by * (covariance[i * count + j] as number), sum),
        strays,
      );
      weights += spoken;
      unknown += spoken * own;
      left += (spoken * own * noteVariance) / (own + noteVariance);
      let gain = 0;
      for (const [k, both] of withGlass.entries()) {
        const off = (spoken * both * both) / (own + noteVariance);
        const whiskey = whiskeys[wanted[k] as number] as string;
        byWhiskey.set(whiskey, (byWhiskey.get(whiskey) ?? 0) + off);
        gain += off;
      }
      all += gain;
      return [attribute, gain] as const;
    });
    return {
      id,
      share: now > 0 ? all / now : 0,
      own: {
        before: Math.sqrt(unknown / Math.max(weights, 1e-12)),
        after: Math.sqrt(left / Math.max(weights, 1e-12)),
      },
      after: Math.sqrt(Math.max(0, now - all) / levels),
      whiskeys: sharesOf([...byWhiskey], all),
      attributes: sharesOf(byAttribute, all),
    };
  });
  return {
    glasses: found.toSorted((a, b) => b.share - a.share || (a.id < b.id ? -1 : 1)),
    before: Math.sqrt(now / levels),
  };
}

const sharesOf = (gains: readonly (readonly [string, number])[], all: number) =>
  gains
    .map(([id, gain]) => ({ id, share: all > 0 ? gain / all : 0 }))
    .filter(({ share }) => share > 0)
    .toSorted((a, b) => b.share - a.share || (a.id < b.id ? -1 : 1));
