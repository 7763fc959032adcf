import type { Rule } from "./rule.ts";
import type { ShelfWhiskey } from "./whiskey.ts";

/** What a recipe is to come close to. Only these attributes count. */
export type Target = {
  readonly profile: Readonly<Record<string, number>>;
  /** Above or equal to 0; 1 where left out. */
  readonly weights?: Readonly<Record<string, number>>;
  /**
   * Power law by attribute: mixed = (sum of share x intensity^e)^(1/e); 1, the plain mean, where left out. Infinity: the strongest part
   * rules, however little there is of it.
   */
  readonly exponents?: Readonly<Record<string, number>>;
};

/** Something besides closeness, in units of distance: `price` per currency a litre, `age` per year, `low` per whole share. */
export type Goals = {
  /** Added to the score for every unit of mean price of a litre poured. A whiskey without a price cannot be used. */
  readonly price?: number;
  /** Taken off for every year of mean age. A whiskey without an age counts as 0 years. */
  readonly age?: number;
  /** Taken off for the share poured from bottles with less than `belowMl` left. */
  readonly useUp?: { readonly weight: number; readonly belowMl: number };
};

export type Problem = {
  readonly whiskeys: readonly ShelfWhiskey[];
  readonly target: Target;
  readonly maxBottles: number;
  readonly maxParts: number;
  readonly rules: readonly Rule[];
  /**
   * `root mean square` (default): sqrt(sum w (m - t)^2 / sum w). `absolute`: sum w |m - t| / sum w. `expected`: the root of the
   * expected square, with the profiles' uncertainty in it.
   */
  readonly distance?: "root mean square" | "absolute" | "expected";
  /** What shares are shares of: the volume poured (default), or the alcohol, which is mixing all at one strength. */
  readonly shares?: "volume" | "alcohol";
  readonly goals?: Goals;
};
