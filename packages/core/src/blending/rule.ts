/** What a rule asks. A fact that is not known keeps no rule about it. */
export type RuleKind =
  /** % vol of the exact mix at 20 °C; with `waterTo` of what it is after water to that strength, which only lowers. */
  | { readonly kind: "strength"; readonly low: number; readonly high: number; readonly waterTo?: number }
  | { readonly kind: "onlyWhiskeys" | "withoutWhiskeys"; readonly ids: readonly string[] }
  | { readonly kind: "onlyMakers" | "withoutMakers"; readonly makers: readonly string[] }
  | { readonly kind: "onlyWoods" | "withoutWoods"; readonly species: readonly string[] }
  /** By what the casks held before. */
  | { readonly kind: "onlyCasks" | "withoutCasks"; readonly held: readonly string[] }
  | { readonly kind: "onlyGrains" | "withoutGrains"; readonly grains: readonly string[] }
  | { readonly kind: "requireTags" | "forbidTags"; readonly tags: readonly string[] }
  | { readonly kind: "minAge"; readonly years: number }
  | { readonly kind: "notGone" }
  | { readonly kind: "oneGroup" }
  | { readonly kind: "mustUse"; readonly ids: readonly string[] }
  | { readonly kind: "atLeastParts" | "atMostParts"; readonly id: string; readonly parts: number }
  /** Share of the alcohol by the grain it was made from. What is unknown of a grain bill counts against the rule. */
  | { readonly kind: "grainShare"; readonly grain: string; readonly low: number; readonly high: number }
  /** Share of the parts from whiskeys with this tag. */
  | { readonly kind: "tagShare"; readonly tag: string; readonly low: number; readonly high: number }
  /** Mean price of a litre poured, weighted by parts. */
  | { readonly kind: "maxPricePerLitre"; readonly price: number }
  /** Price of the whiskey in one bottle: of the poured mix or, with `waterTo`, of the mix reduced to that strength. */
  | {
      readonly kind: "maxPricePerBottle";
      readonly bottleMl: number;
      readonly price: number;
      readonly waterTo?: number;
    }
  /** So much poured in all, and every whiskey's share of it on the shelf. */
  | { readonly kind: "batch"; readonly ml: number };

export type Rule = RuleKind & { readonly name: string };

/** A bound is kept when it is missed by no more than this, in the bound's own unit: floating point, not generosity. */
export const RULE_TOLERANCE = 1e-9;
