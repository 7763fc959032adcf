import { z } from "zod";
import { RecipeFillAnswer, RecipeFillDraft, FillShelf } from "./fill.ts";
import { LoosenAnswer, LoosenDraft } from "./loosen.ts";
import { RECIPE_FILE_TYPE, RecipeFile } from "./recipe-file.ts";

const of = (schema: z.ZodType, io: "input" | "output"): object => {
  const { $schema: _, ...shape } = z.toJSONSchema(schema, { target: "draft-2020-12", io });
  return shape;
};
const $schema = "https://json-schema.org/draft/2020-12/schema";

/** JSON Schema of a recipe file, made from the schema that reads it: docs/recipe-file.schema.json. */
export const recipeFileSchema = (): object => ({
  $schema,
  title: "Parts & Proof: a recipe file",
  description: `A recipe that others can fill from their own shelf; media type ${RECIPE_FILE_TYPE}. Rules: docs/slots.md.`,
  ...of(RecipeFile, "input"),
});

/** JSON Schema of what is filled and what is answered: docs/fill.schema.json. */
export const fillSchema = (): object => ({
  $schema,
  title: "Parts & Proof: a recipe filled from a shelf",
  description:
    "What POST /api/fill reads; `fill --shelf` reads $defs.shelf and `fill --recipe` a recipe file; all answer $defs.answer. POST /api/loosen reads $defs.loosen and answers $defs.loosened.",
  ...of(RecipeFillDraft, "input"),
  $defs: {
    shelf: of(FillShelf, "input"),
    answer: of(RecipeFillAnswer, "output"),
    loosen: of(LoosenDraft, "input"),
    loosened: of(LoosenAnswer, "output"),
  },
});
