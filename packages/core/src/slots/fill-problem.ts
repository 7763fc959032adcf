import type { Abv20 } from "../quantity/index.ts";
import type { RuledWhiskey } from "./ruled-whiskey.ts";
import type { SlotRule } from "./rule.ts";

export type FillSlot = {
  /** Whole, above 0. */
  readonly parts: number;
  readonly rule: SlotRule;
  /** Only these may stand here, where the recipe names a whiskey and no rule. */
  readonly ids?: readonly string[];
};

/** What the filled recipe is to come close to. What is null or left out of `profile` is not known, and not counted. */
export type Original = {
  readonly profile: Readonly<Record<string, number>>;
  readonly abv20: number | null;
  readonly youngestYears: number | null;
};

export type FillProblem = {
  readonly whiskeys: readonly RuledWhiskey[];
  /** At most 12. A whiskey stands in one of them only. */
  readonly slots: readonly FillSlot[];
  readonly original: Original;
  /** Above or equal to 0, 1 where left out: of an attribute by its id, of the strength and of the age. */
  readonly weights?: {
    readonly profile?: Readonly<Record<string, number>>;
    readonly strength?: number;
    readonly age?: number;
  };
  /** Water to this strength after mixing, % vol at 20 °C: then only what is missing to it counts. */
  readonly waterTo?: Abv20;
  /** So much poured in all, each share of it on the shelf. */
  readonly pouredMl?: number;
};

/** So many % vol, or years, count as one of the 10 points of an attribute. Ours; common practice, no source. */
export const PERCENT_PER_POINT = 3;
export const YEARS_PER_POINT = 3;
/** Ages further apart than this many points, and ages that are not known, count as this many. */
export const MOST_POINTS = 10;
