/** From `low` to `high`, both among it; null where there is no bound. At least one of the two is set. */
export type Bounds = { readonly low: number | null; readonly high: number | null };

/** What a bound can be of, and in which unit: % vol at 20 °C, years, currency a litre, the calendar year of a release. */
export type Measure = "strength" | "age" | "price" | "release";

/** Lists of a whiskey: its grains, the woods of its casks, what the casks held before. */
export type Listed = "grain" | "wood" | "held";

/** Single facts of a whiskey. */
export type Named = "kind" | "place" | "distillery" | "maker" | "tag";

/** What two slots can have in common. */
export type Common = "distillery" | "maker" | "kind";

/**
 * One thing asked of the whiskey in a slot.
 *
 * `profile` has an attribute's id and bounds of 0 to 10; `grainShare` per cent of the mash. `listed`: `only` that nothing else is
 * among them, `no` that none of these is, `some` that one of these is. `same` looks at another slot, counted from 1.
 */
export type Condition =
  | ({ readonly about: Measure } & Bounds)
  | ({ readonly about: "profile"; readonly attribute: string } & Bounds)
  | ({ readonly about: "grainShare"; readonly grain: string } & Bounds)
  | {
      readonly about: "listed";
      readonly what: Listed;
      readonly how: "only" | "no" | "some";
      readonly names: readonly string[];
    }
  | {
      readonly about: "named";
      readonly what: Named;
      readonly not: boolean;
      readonly names: readonly string[];
    }
  | { readonly about: "same"; readonly what: Common; readonly not: boolean; readonly slot: number }
  | { readonly about: "sold" };

/** A whiskey keeps a rule when it keeps every condition; an empty rule is kept by anything. */
export type SlotRule = readonly Condition[];

/** More is refused where it stands, not cut short. */
export const RULE_LIMITS = { characters: 2000, conditions: 40, names: 40, slots: 12 } as const;
