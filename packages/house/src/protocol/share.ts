import { z } from "zod";
import { VolumeMl } from "./fields.ts";
import { RecipeCheck, RecipeFile } from "./recipe-file.ts";

/** What a recipe can be passed on as, besides its file. */
export const SharedAs = z.enum(["link", "html", "text", "markdown", "card", "square"]);
export type SharedAs = z.infer<typeof SharedAs>;

/** Where a house listens that was told nothing else: the link then opens the reader's own. */
export const OWN_ADDRESS = "http://127.0.0.1:4480";

export const LinkAddress = z
  .url({ protocol: /^https?$/u })
  .max(200)
  .default(OWN_ADDRESS);

export const ShareDraft = z.strictObject({
  recipe: RecipeFile,
  as: SharedAs,
  /** The address that a link names. Whoever reads it needs none: the recipe stands in the link itself. */
  address: LinkAddress,
  /** The bottle that amounts are written for. */
  bottleMl: VolumeMl.default(700),
});

export const Shared = z.object({
  as: SharedAs,
  /** A name for its file. */
  name: z.string(),
  type: z.string(),
  text: z.string(),
  link: z.string(),
  /** Whether the link fits a square code that a phone reads; how many characters it has of how many. */
  square: z.object({ fits: z.boolean(), characters: z.int(), most: z.int() }),
  /** For the bottle that was asked for; g and water null where a strength is not known, and `without` says so. */
  amounts: z.object({
    bottleMl: z.number(),
    slots: z.array(z.object({ ml: z.number(), g: z.number().nullable() })),
    water: z.object({ ml: z.number(), g: z.number().nullable() }).nullable(),
    abv: z.number().nullable(),
    without: z.string().nullable(),
  }),
  /** Of the recipe's canonical form. */
  sha256: z.string(),
});
export type Shared = z.infer<typeof Shared>;

/** What was passed on, read again: a link, a page, or a recipe file's own text. */
export const OpenDraft = z.strictObject({ text: z.string().min(1).max(2_000_000) });
export const Opened = z.object({ recipe: RecipeFile, check: RecipeCheck });
export type Opened = z.infer<typeof Opened>;
