import { parseRule, RULE_LIMITS } from "@partsproof/core/slots";
import { z } from "zod";
import { LongText, OptionalText, ShortText } from "./fields.ts";
import { SearchWhiskey } from "./search.ts";

/** What a recipe file says it is. A later version keeps what an earlier one says, and may say more. */
export const RECIPE_FILE_FORMAT = "parts-and-proof/recipe";
export const RECIPE_FILE_TYPE = "application/vnd.parts-and-proof.recipe+json";

const Percent = z.number().min(0).max(100);
const Years = z.number().min(0).max(200);
const Intensities = z.record(z.string().min(1).max(120), z.number().min(0).max(10));

/** A rule in its readable form: docs/slots.md. */
export const RuleText = z
  .string()
  .min(1)
  .max(RULE_LIMITS.characters)
  .superRefine((text, context) => {
    const parsed = parseRule(text);
    if (parsed.ok) return;
    const { expected, at } = parsed.error;
    context.addIssue({
      code: "custom",
      message: `a rule: ${expected} at character ${at + 1}`,
      input: text,
    });
  });

/** The whiskey of a slot as the recipe's maker had it. What is left out is not known. */
export const NamedWhiskey = z.looseObject({
  maker: ShortText.optional(),
  name: ShortText,
  release: OptionalText.optional(),
  abv: Percent.optional(),
  ageYears: Years.optional(),
  /** Where it comes from, the narrower first. */
  place: ShortText.optional(),
  profile: Intensities.optional(),
});

/** What a slot that is a blend itself was made of: the lines of its own recipe. */
const BlendInSlot = z.looseObject({
  name: ShortText.optional(),
  slots: z
    .array(
      z.looseObject({
        parts: z.int().min(1).max(99),
        whiskey: NamedWhiskey.optional(),
        rule: RuleText.optional(),
        reason: LongText.optional(),
      }),
    )
    .min(1)
    .max(RULE_LIMITS.slots),
  waterTo: Percent.optional(),
});

const FileSlot = z
  .looseObject({
    parts: z.int().min(1).max(99),
    whiskey: NamedWhiskey.optional(),
    /** Where `whiskey` is a blend made before: what of. */
    blend: BlendInSlot.optional(),
    rule: RuleText.optional(),
    /** Why it stands here, in words. */
    reason: LongText.optional(),
  })
  .refine(({ whiskey, rule }) => (whiskey ?? rule) !== undefined, { error: "a whiskey, a rule or both" });

export const Sha256 = z.string().regex(/^[0-9a-f]{64}$/u);
/** A recipe that another came from: its name and, where there is a file, the hash of it. */
export const RecipeOrigin = z.looseObject({ name: ShortText, sha256: Sha256.optional() });

/**
 * A recipe that others can fill from their own shelf: docs/recipe-file.md. Fields that are not known here are kept as they are.
 */
export const RecipeFile = z
  .looseObject({
    format: z.literal(RECIPE_FILE_FORMAT),
    version: z.int().min(1),
    name: ShortText,
    slots: z.array(FileSlot).min(1).max(RULE_LIMITS.slots),
    /** What it comes to as its maker had it, before water; worked out of the slots' whiskeys where left out. */
    original: z
      .looseObject({ profile: Intensities.optional(), abv: Percent.optional(), ageYears: Years.optional() })
      .optional(),
    /** Water to this strength after mixing, % vol at 20 °C. */
    waterTo: Percent.optional(),
    restDays: z.int().min(0).max(3650).optional(),
    /** Piece, toast, how long: in words. */
    oak: z.string().max(400).optional(),
    note: LongText.optional(),
    /** Recipes it came from, the nearest first: a name and, where there is a file, its hash. */
    lineage: z.array(RecipeOrigin).max(50).optional(),
    /** What blind tastings found of it, in words and counts. Nobody is named. */
    findings: z
      .looseObject({
        flights: z.int().min(0),
        sheets: z.int().min(0),
        summary: LongText.optional(),
      })
      .optional(),
    /** Who is to be named, as they chose themselves. */
    credits: z.array(ShortText).max(50).optional(),
  })
  .superRefine(({ slots }, context) => {
    for (const [n, { rule }] of slots.entries()) {
      const parsed = parseRule(rule ?? "anything");
      if (!parsed.ok) continue;
      for (const condition of parsed.rule)
        if (condition.about === "same" && (condition.slot === n + 1 || condition.slot > slots.length))
          context.addIssue({
            code: "custom",
            path: ["slots", n, "rule"],
            message: `another slot of ${slots.length} to be compared with`,
            input: rule,
          });
    }
  });
export type RecipeFile = z.infer<typeof RecipeFile>;
export type NamedWhiskey = z.infer<typeof NamedWhiskey>;

/** What goes out with a recipe of the house; nothing personal unless it is asked for. */
export const RecipeExport = z.strictObject({
  /** By slot of the recipe, in place of its own rules; null where only its whiskey stands for it. */
  rules: z.array(RuleText.nullable()).max(RULE_LIMITS.slots).optional(),
  reasons: z.array(LongText.nullable()).max(RULE_LIMITS.slots).optional(),
  credits: z.array(ShortText).max(50).optional(),
  /** The recipe's own note. */
  withNote: z.boolean().default(false),
  /** How many blind flights and sheets it stood in, and what they say together. Nobody is named. */
  withFindings: z.boolean().default(false),
});

export const RecipeCheck = z.object({
  name: z.string(),
  version: z.int(),
  /** SHA-256 of the canonical form (RFC 8785), in hexadecimal: the same recipe has the same, however its file is written. */
  sha256: z.string(),
  bytes: z.int(),
  /** By slot: the rule as the language prints it, null where only a whiskey is named. */
  rules: z.array(z.string().nullable()),
  /** Fields that this version does not know; they are kept. */
  unknownFields: z.array(z.string()),
  /** The canonical form. */
  canonical: z.string(),
});
export type RecipeCheck = z.infer<typeof RecipeCheck>;

/** One whiskey of a shelf that a recipe is filled from. What is left out is not known, an attribute too. */
export const FillWhiskey = SearchWhiskey.extend({
  name: z.string().min(1).max(120).optional(),
  release: z.string().max(120).optional(),
  /** Malt, pot still, rye, … */
  kind: z.string().min(1).max(120).nullish(),
  place: z.string().min(1).max(120).nullish(),
  /** Calendar year of the release. */
  released: z.int().min(0).max(9999).nullish(),
});
export type FillWhiskey = z.infer<typeof FillWhiskey>;
