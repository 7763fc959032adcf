import { z } from "zod";
import { MixingExponent } from "./mixing.ts";

/** What one search may hold. More is refused and not cut short. */
export const SEARCH_LIMITS = {
  whiskeys: 2000,
  attributes: 40,
  bottles: 12,
  parts: 60,
  recipes: 200,
  seconds: 60,
} as const;

const Name = z.string().min(1).max(120);
const Names = z.array(Name).min(1).max(SEARCH_LIMITS.whiskeys);
const Share = z.number().min(0).max(1);
const Percent = z.number().min(0).max(100);
const Price = z.number().min(0).max(1e9);
const Millilitres = z.number().min(0).max(1e7);

const few = <T extends z.ZodType>(value: T, most: number) =>
  z.record(Name, value).refine((record) => Object.keys(record).length <= most, {
    error: `at most ${most} entries`,
  });

/** 0 to 10; `null` is unknown and searched as any of them; `sd` says by about how much a number may be off. */
export const SearchIntensity = z.union([
  z.number().min(0).max(10),
  z.null(),
  z.strictObject({ value: z.number().min(0).max(10), sd: z.number().min(0).max(10) }),
]);

const ascends = ([low, high]: readonly [number, number]): boolean => low <= high;
const Range = (value: z.ZodNumber) =>
  z.tuple([value, value]).refine(ascends, { error: "its first number not above its second" });

/** One whiskey of a search. What is null or left out is not known. */
export const SearchWhiskey = z.strictObject({
  id: Name,
  /** % vol at 20 °C. */
  abv: Percent,
  /** By attribute. One that is left out counts as 0. */
  profile: few(SearchIntensity, SEARCH_LIMITS.attributes),
  pricePerLitre: Price.nullish(),
  availableMl: Millilitres.nullish(),
  ageYears: z.number().min(0).max(200).nullish(),
  grains: few(Share, 40)
    .refine((shares) => Object.values(shares).reduce((sum, share) => sum + share, 0) <= 1 + 1e-6, {
      error: "shares that come to 1 at most",
    })
    .nullish(),
  casks: z
    .array(z.strictObject({ species: Name, held: Name }))
    .max(40)
    .nullish(),
  tags: z.array(Name).max(100).optional(),
  maker: Name.nullish(),
  /** Distillery, or group of them. */
  group: Name.nullish(),
  /** No longer sold. */
  gone: z.boolean().optional(),
});
export type SearchWhiskey = z.infer<typeof SearchWhiskey>;

const strengthRules = {
  /** Lowest and highest strength of the mix, % vol at 20 °C; before water, unless there is `waterTo`. */
  abv: Range(Percent).optional(),
  /** Water to this strength after mixing, % vol: the mix must have it at least. */
  waterTo: Percent.optional(),
};

/** What a recipe must keep. The names of these fields are the names of a conflict. */
export const SearchRules = z.strictObject({
  maxBottles: z.int().min(1).max(SEARCH_LIMITS.bottles),
  maxParts: z.int().min(1).max(SEARCH_LIMITS.parts),
  ...strengthRules,
  minAgeYears: z.number().min(0).max(200).optional(),
  maxPricePerLitre: Price.optional(),
  /** Price of the whiskey in a bottle; of the mix reduced to `waterTo`, if there is one. */
  maxPricePerBottle: z.strictObject({ bottleMl: Millilitres.min(1), price: Price }).optional(),
  forbidTags: Names.optional(),
  requireTags: Names.optional(),
  tagShare: z
    .array(z.strictObject({ tag: Name, share: Range(Share) }))
    .max(40)
    .optional(),
  mustUse: Names.optional(),
  onlyWhiskeys: Names.optional(),
  withoutWhiskeys: Names.optional(),
  /** Kept for another day: not used. */
  keep: Names.optional(),
  onlyMakers: Names.optional(),
  withoutMakers: Names.optional(),
  onlyWoods: Names.optional(),
  withoutWoods: Names.optional(),
  onlyCasks: Names.optional(),
  withoutCasks: Names.optional(),
  onlyGrains: Names.optional(),
  withoutGrains: Names.optional(),
  /** Share of the alcohol that was made from a grain. */
  grainShare: z
    .array(z.strictObject({ grain: Name, share: Range(Share) }))
    .max(40)
    .optional(),
  oneGroup: z.literal(true).optional(),
  notGone: z.literal(true).optional(),
  /** Fewest and most parts of one whiskey; at least 1 means that it is used. */
  parts: z
    .array(
      z
        .strictObject({
          id: Name,
          atLeast: z.int().min(0).max(SEARCH_LIMITS.parts).optional(),
          atMost: z.int().min(0).max(SEARCH_LIMITS.parts).optional(),
        })
        .refine(({ atLeast, atMost }) => (atLeast ?? atMost) !== undefined, {
          error: "atLeast, atMost or both",
        }),
    )
    .max(100)
    .optional(),
  /** Poured in all, mL; each whiskey's share of it must be on the shelf. */
  batchMl: Millilitres.min(1).optional(),
});
export type SearchRules = z.infer<typeof SearchRules>;

/** What a recipe is to come close to. Only these attributes count. */
export const SearchTarget = z.strictObject({
  profile: few(z.number().min(0).max(10), SEARCH_LIMITS.attributes).refine(
    (profile) => Object.keys(profile).length > 0,
    { error: "at least 1 entry" },
  ),
  /** 1 where left out. */
  weights: few(z.number().min(0).max(1e6), 100).optional(),
  /** Power law by attribute: mixed = (sum of share x intensity^e)^(1/e); 1, the plain mean, where left out. Or "strongest": that part rules. */
  exponents: few(MixingExponent, SEARCH_LIMITS.attributes).optional(),
});
export type SearchTarget = z.infer<typeof SearchTarget>;

const someWeight = ({ profile, weights }: SearchTarget): boolean =>
  Object.keys(profile).some((attribute) => (weights?.[attribute] ?? 1) > 0);

const problem = {
  whiskeys: z.array(SearchWhiskey).max(SEARCH_LIMITS.whiskeys),
  target: SearchTarget.refine(someWeight, { path: ["weights"], error: "one weight above 0" }),
  rules: SearchRules,
  top: z.int().min(1).max(SEARCH_LIMITS.recipes).optional(),
  /** `absolute`: sum w |m - t| / sum w. `expected`: with how uncertain the profiles are counted in. */
  distance: z.enum(["root mean square", "absolute", "expected"]).optional(),
  /** What a whiskey's share in a profile is a share of: the volume poured, or the alcohol, which is mixing all at one strength. */
  shares: z.enum(["volume", "alcohol"]).optional(),
};

/** A problem as a file holds it: docs/search.md. */
export const SearchProblem = z
  .strictObject(problem)
  .superRefine(({ whiskeys, target, distance, shares }, context) => {
    const weak = shares === "alcohol" ? whiskeys.findIndex(({ abv }) => abv === 0) : -1;
    if (weak >= 0)
      context.addIssue({
        code: "custom",
        path: ["whiskeys", weak, "abv"],
        message: "alcohol, where shares are of the alcohol",
        input: 0,
      });
    const bent = Object.values(target.exponents ?? {}).some((exponent) => exponent !== 1);
    if (bent && (distance ?? "root mean square") !== "root mean square")
      context.addIssue({
        code: "custom",
        path: ["distance"],
        message: "root mean square, where an exponent is not 1",
        input: distance,
      });
    const seen = new Set<string>();
    for (const [n, { id }] of whiskeys.entries()) {
      if (seen.has(id))
        context.addIssue({
          code: "custom",
          path: ["whiskeys", n, "id"],
          message: "an id that no whiskey before it has",
          input: id,
        });
      seen.add(id);
    }
  });
export type SearchProblem = z.infer<typeof SearchProblem>;

/** How long a search may go on. What it has found by then is its answer. */
export const SearchQuery = z.object({
  seconds: z.coerce.number().min(0.01).max(SEARCH_LIMITS.seconds).default(10),
});
