import { z } from "zod";
import { Chance } from "./chance.ts";
import { FILL_LIMITS, RecipeFillAnswer, RecipeFillDraft } from "./fill.ts";
import { Id, Instant, LongText, ShortText } from "./fields.ts";
import { RecipeFile, Sha256 } from "./recipe-file.ts";
import { ResultFile } from "./result-file.ts";
import { LinkAddress, OpenDraft } from "./share.ts";

const Already = z.object({ recipeId: Id, name: z.string() }).nullable();

/** A recipe file looked at before it is taken in; nothing is kept. */
export const RecipeTakeInPreviewDraft = z.strictObject({ recipe: RecipeFile });
export const RecipeTakeInPreview = z.object({
  name: z.string(),
  version: z.int(),
  sha256: z.string(),
  /** What a recipe of this household would have as its lines. */
  slots: z.array(
    z.object({
      slot: z.int(),
      parts: z.int(),
      rule: z.string().nullable(),
      reason: z.string().nullable(),
      /** The whiskey that its maker had. */
      named: z.string().nullable(),
      abv: z.number().nullable(),
      /** The whiskey of this household that is the named one. */
      here: z.object({ whiskeyId: Id, label: z.string() }).nullable(),
      /** Where it was a blend itself: what of, in words. */
      blend: z.array(z.string()),
    }),
  ),
  waterTo: z.number().nullable(),
  restDays: z.int().nullable(),
  oak: z.string(),
  note: z.string(),
  lineage: z.array(z.object({ name: z.string(), sha256: z.string().nullable() })),
  credits: z.array(z.string()),
  findings: z.object({ flights: z.int(), sheets: z.int(), summary: z.string() }).nullable(),
  /** Fields that this version does not know, with where they stand; they are kept and written out again. */
  unknownFields: z.array(z.string()),
  /** The recipe as which this very file is here already. */
  already: Already,
});
export type RecipeTakeInPreview = z.infer<typeof RecipeTakeInPreview>;

export const RecipeTakeInDraft = z.strictObject({
  recipe: RecipeFile,
  /** Of the file that was looked at: another one is refused. */
  sha256: Sha256,
  /** Once more, though this very file is here already. */
  again: z.boolean().default(false),
});

/** Filling a recipe of the household from its own shelf. */
export const ShelfFillDraft = z.strictObject({
  ...RecipeFillDraft.omit({ recipe: true, shelf: true, couldBuy: true }).shape,
  /** Whiskeys that are not to be used. */
  without: z.array(Id).max(FILL_LIMITS.whiskeys).optional(),
});

export const ShelfFillAnswer = z.object({
  ...RecipeFillAnswer.shape,
  /** The recipe's file as it was filled: what a recipe made of this came from. */
  recipe: z.object({ name: z.string(), sha256: z.string() }),
  /** What ids are called. */
  names: z.record(z.string(), z.string()),
  /** What was to come close to; null is not known. */
  original: z.object({ abv: z.number().nullable(), ageYears: z.number().nullable() }),
  /** Whiskeys that could be bought and were tried in slots that stay empty. */
  couldBuy: z.int(),
});
export type ShelfFillAnswer = z.infer<typeof ShelfFillAnswer>;

/** How often one blend was put first, beside what luck gives. */
const PlacesFound = z.object({
  flights: z.int(),
  sheets: z.int(),
  tasters: z.int(),
  /** Sheets that put it first, alone. */
  first: z.int(),
  /** As many as luck gives on average. */
  byLuck: z.number(),
  luck: Chance,
  /** Mean share of the other glasses that it was put before; a half is what luck gives. */
  ahead: z.number(),
  sentence: z.string(),
});
export type PlacesFound = z.infer<typeof PlacesFound>;

export const ResultDraft = z.strictObject({
  /** What this kitchen wants to be called; nothing where left out. */
  kitchen: ShortText.optional(),
  notes: LongText.optional(),
  /** Names of the whiskeys in the slots. */
  withWhiskeys: z.boolean().default(true),
  /** Names of what stood beside it in the flights. */
  withBeside: z.boolean().default(false),
  /** The address that its link names. Whoever reads it needs none: the result stands in the link itself. */
  address: LinkAddress,
});
export const ResultMade = z.object({
  result: ResultFile,
  sha256: z.string(),
  canonical: z.string(),
  /** All of it behind the # of a link; null where it is too long for one and goes as a file. */
  link: z.string().nullable(),
});
export type ResultMade = z.infer<typeof ResultMade>;

/** As a file, or as the text that was sent: a link with whatever stands around it, or the file's own. */
export const ResultPreviewDraft = z
  .strictObject({ result: ResultFile.optional(), text: OpenDraft.shape.text.optional() })
  .refine(({ result, text }) => (result === undefined) !== (text === undefined), {
    error: "one of result and text",
  });
export const ResultPreview = z.object({
  recipe: z.object({ name: z.string(), sha256: z.string() }),
  /** The household's recipe that went out as that file; null where none did. */
  about: Already,
  kitchen: z.string().nullable(),
  slots: z.array(z.object({ slot: z.int(), parts: z.int(), label: z.string().nullable() })),
  abv: z.number().nullable(),
  restDays: z.int().nullable(),
  flights: z.int(),
  sheets: z.int(),
  tasters: z.int(),
  notes: z.string(),
  sha256: z.string(),
  unknownFields: z.array(z.string()),
  /** This very result has come before. */
  already: z.boolean(),
  /** What is taken in, with every field that is not known here. */
  result: ResultFile,
});
export type ResultPreview = z.infer<typeof ResultPreview>;

export const ResultTakeInDraft = z.strictObject({
  result: ResultFile,
  sha256: Sha256,
  /** Which recipe it is of, where no file of the household has the hash that it names. */
  recipeId: Id.optional(),
});

/** What every kitchen found of one recipe, its own among them, kitchen by kitchen and together. */
export const RecipeResults = z.object({
  recipeId: Id,
  name: z.string(),
  headline: z.string(),
  kitchens: z.array(
    z.object({
      /** Null for this household's own flights. */
      resultId: Id.nullable(),
      /** As its sender chose. */
      kitchen: z.string().nullable(),
      receivedAt: Instant.nullable(),
      slots: z.array(z.object({ slot: z.int(), parts: z.int(), label: z.string().nullable() })),
      abv: z.number().nullable(),
      restDays: z.int().nullable(),
      liked: PlacesFound.nullable(),
      close: PlacesFound.nullable(),
      notes: z.string(),
    }),
  ),
  /** All kitchens together. */
  liked: PlacesFound.nullable(),
  close: PlacesFound.nullable(),
  /** What can not be said of it. */
  said: z.array(z.string()),
  /** How many different files of it went out. */
  passedOn: z.int(),
});
export type RecipeResults = z.infer<typeof RecipeResults>;
