import { z } from "zod";

/** One recipe found, in lowest terms. */
export const SearchRecipe = z.object({
  parts: z.array(z.object({ id: z.string(), parts: z.int().min(1) })),
  /** sqrt(sum w (m - t)² / sum w) over the target's attributes. */
  distance: z.number(),
  /** % vol of the exact mix at 20 °C, before water. */
  abv: z.number(),
  /** Mean price of a litre poured; null when one of its whiskeys has no price. */
  pricePerLitre: z.number().nullable(),
  /** Age of the youngest; null when one of its whiskeys has no age. */
  ageYears: z.number().nullable(),
  /** Predicted intensities of the target's attributes. */
  predicted: z.record(z.string(), z.number()),
  /** The distance to expect, with how uncertain the profiles are: never below `distance`. Null but for plain means and squares. */
  expectedDistance: z.number().nullable(),
  /** How probable it is that the first recipe of the list is truly closer than this one; null for the first, and as above. */
  firstIsCloser: z.number().nullable(),
});
export type SearchRecipe = z.infer<typeof SearchRecipe>;

export const SearchAnswer = z.object({
  /** The closest first. */
  recipes: z.array(SearchRecipe),
  /** No other recipe that keeps the rules is closer than the last of the list: proven. */
  provenOptimal: z.boolean(),
  /** Distance of the first less a distance no recipe goes below; null when time ran out before one was found. */
  gap: z.number().nullable(),
  nodes: z.int(),
  elapsedMs: z.number(),
  /** Only where no recipe keeps the rules: a smallest set of them that cannot stand together. */
  conflict: z.array(z.string()).optional(),
  /** False when whether some of the rules can be kept together took too long to find out. */
  conflictProven: z.boolean().optional(),
  /** The recipe that breaks fewest rules, the closest of those; null when there is none at all. */
  nearest: z
    .object({ recipe: SearchRecipe, breaks: z.array(z.string()) })
    .nullable()
    .optional(),
  /** Attributes of the target that nobody has said of a whiskey. */
  unknown: z.array(z.object({ id: z.string(), attribute: z.string() })),
  /** Weights of attributes that the target has not: they count for nothing. */
  unusedWeights: z.array(z.string()),
  /** How many recipes from the first on cannot be told apart on what is known: it beats them with less than 9 in 10. */
  cannotTellApart: z.int(),
});
export type SearchAnswer = z.infer<typeof SearchAnswer>;

/** What closeness is traded against: the mean price of a litre, how many bottles, how many parts, the youngest's age. */
export const Traded = z.enum(["price", "bottles", "parts", "age"]);

export const TradeOffAnswer = z.object({
  /** The closest first; nothing is both as close as a point and as good in the other measure. */
  points: z.array(SearchRecipe),
  /** False when there are more than are listed. */
  complete: z.boolean(),
  elapsedMs: z.number(),
});
export type TradeOffAnswer = z.infer<typeof TradeOffAnswer>;

export const RulePricesAnswer = z.object({
  /** The closest with all rules kept; null when there is none. */
  best: SearchRecipe.nullable(),
  rules: z.array(
    z.object({
      /** The rule's field, and its place there where the field holds several. */
      rule: z.string(),
      /** How much closer the best would be without it; null where one of the two is missing. */
      costs: z.number().nullable(),
      without: SearchRecipe.nullable(),
    }),
  ),
  elapsedMs: z.number(),
});
export type RulePricesAnswer = z.infer<typeof RulePricesAnswer>;

export const PurchasesAnswer = z.object({
  /** The greatest gain first. */
  purchases: z.array(
    z.object({
      id: z.string(),
      /** How much closer the best becomes, summed over the targets. A target out of reach counts as 10 off. */
      gain: z.number(),
      /** By target: the best recipe that uses it, where that beats the shelf's own. */
      recipes: z.array(SearchRecipe.nullable()),
    }),
  ),
  /** Whiskeys of the shelf in none of the best recipes, `top` for each target. */
  neverNeeded: z.array(z.string()),
  elapsedMs: z.number(),
});
export type PurchasesAnswer = z.infer<typeof PurchasesAnswer>;
