import type { WoodSpecies } from "@partsproof/house/protocol";

/** The rules that can be turned off. The two bounds every recipe has, bottles and parts, always stand. */
export type RuleKey =
  | "notTarget"
  | "onShelf"
  | "strength"
  | "minAge"
  | "wood"
  | "withoutHeld"
  | "notGone"
  | "onePlace"
  | "grain"
  | "mustUse"
  | "keep"
  | "mostOfOne"
  | "price"
  | "batch";

/** What a rule says once it stands; text as it is typed. */
export interface RuleValues {
  readonly maxBottles: number;
  readonly maxParts: number;
  readonly low: string;
  readonly high: string;
  readonly years: string;
  readonly wood: WoodSpecies;
  readonly held: string;
  readonly grain: string;
  readonly grainPercent: string;
  readonly mustUse: readonly string[];
  readonly keep: readonly string[];
  readonly mostOf: string;
  readonly mostParts: number;
  readonly price: string;
  readonly batch: string;
}

/** What counts besides closeness. */
export interface Besides {
  /** Money for 700 mL that is worth 0.1 of closeness; "" counts for nothing. */
  readonly cheaperBy: string;
  /** Years of mean age that are worth 0.1 of closeness. */
  readonly olderBy: string;
  /** Bottles with less than this are used up rather: pouring only from such is worth 0.3 of closeness. */
  readonly lowBelow: string;
}

export interface Rules extends RuleValues {
  readonly on: readonly RuleKey[];
  readonly besides: Besides;
  /** Counts what nobody has said against a recipe. */
  readonly wary: boolean;
  /** Takes every attribute by the mean of the parts, whatever mixes have shown. */
  readonly byMean: boolean;
}

/** What most evenings begin with. The numbers are starting points (common practice, no source). */
export const FIRST_RULES: Rules = {
  on: ["notTarget", "onShelf"],
  maxBottles: 4,
  maxParts: 12,
  low: "46",
  high: "60",
  years: "10",
  wood: "American oak",
  held: "",
  grain: "",
  grainPercent: "51",
  mustUse: [],
  keep: [],
  mostOf: "",
  mostParts: 2,
  price: "60",
  batch: "700 mL",
  besides: { cheaperBy: "", olderBy: "", lowBelow: "" },
  wary: false,
  byMean: false,
};

export const stands = (rules: Rules, key: RuleKey): boolean => rules.on.includes(key);

export function toggled(rules: Rules, key: RuleKey): Rules {
  return {
    ...rules,
    on: stands(rules, key) ? rules.on.filter((other) => other !== key) : [...rules.on, key],
  };
}
