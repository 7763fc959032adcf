import { abv20OfStrength } from "@partsproof/core/alcoholometry";
import type { BodyRead, RecipeFile } from "../../protocol/index.ts";
import { RECIPE_FILE_FORMAT } from "../../protocol/index.ts";
import type { Handlers } from "../handler.ts";
import type { Records } from "../ports.ts";
import { knownRecipe, versionOf } from "../recipes/index.ts";
import { refuse } from "../refuse.ts";
import type { RecipeVersionRow, WhiskeyRow } from "../rows.ts";
import { strengthOf } from "../shelf/index.ts";
import { printed } from "./check-recipe.ts";
import { originalOf } from "./original-of.ts";

/** A recipe of the house as a file: its latest version, with the facts of its whiskeys. Notes only where they are asked for. */
export const exportRecipeHandlers: Handlers<"exportRecipe"> = {
  exportRecipe: ({ house, at, body }) =>
    house.store.transaction(async (records) => {
      const recipe = await knownRecipe(records, at.household, at["recipe"] ?? "", ["recipe"]);
      const version = await versionOf(records, recipe, recipe.latestNumber);
      if (version === undefined)
        throw new Error(`recipe ${recipe.id} requires its version ${recipe.latestNumber}`);
      const { waterTo, restDays, oak, note } = version.body;
      const slots = await slotsOf(records, at.household, version.body.slots, body);
      const file: RecipeFile = { format: RECIPE_FILE_FORMAT, version: 1, name: recipe.name, slots };
      const { profile, abv20: abv, youngestYears } = originalOf(file);
      return {
        ...file,
        original: {
          ...(Object.keys(profile).length > 0 ? { profile: { ...profile } } : {}),
          ...(abv === null ? {} : { abv }),
          ...(youngestYears === null ? {} : { ageYears: youngestYears }),
        },
        ...(waterTo === null ? {} : { waterTo: abv20OfStrength(strengthOf(waterTo)) }),
        ...(restDays === null ? {} : { restDays }),
        ...(oak === "" ? {} : { oak }),
        ...(body.withNote && note !== "" ? { note } : {}),
        ...(body.credits === undefined ? {} : { credits: body.credits }),
      };
    }),
};

type Slots = RecipeVersionRow["body"]["slots"];

async function slotsOf(
  records: Records,
  household: string,
  slots: Slots,
  { rules, reasons }: BodyRead<"exportRecipe">,
): Promise<RecipeFile["slots"]> {
  const made: RecipeFile["slots"] = [];
  for (const [n, { parts, of }] of slots.entries()) {
    if (parts === 0) continue;
    if (of.kind !== "whiskey")
      refuse(422, {
        code: "slot_of_a_batch",
        path: ["slots", n],
        limit: "whiskeys in every slot",
        received: of.batchId,
        message: `a recipe file requires whiskeys in every slot, got a batch in slot ${n + 1}`,
      });
    const whiskey = await records.find("whiskey", household, of.whiskeyId);
    if (!whiskey) continue;
    const rule = rules?.[n];
    const reason = reasons?.[n];
    made.push({
      parts,
      whiskey: whiskeyOf(whiskey),
      ...(typeof rule === "string" ? { rule: printed(rule) } : {}),
      ...(typeof reason === "string" ? { reason } : {}),
    });
  }
  return made;
}

/** Facts that are known, and what it tasted of as the household has it, without how unsure: never its own note. */
function whiskeyOf({
  maker,
  name,
  release,
  strength,
  ageYears,
  profile,
}: WhiskeyRow): RecipeFile["slots"][number]["whiskey"] {
  const said = Object.entries(profile?.intensities ?? {}).flatMap(([id, own]) =>
    own === null ? [] : [[id, typeof own === "number" ? own : own.value] as const],
  );
  return {
    maker,
    name,
    ...(release === "" ? {} : { release }),
    abv: abv20OfStrength(strengthOf(strength)),
    ...(ageYears === null ? {} : { ageYears }),
    ...(said.length > 0 ? { profile: Object.fromEntries(said) } : {}),
  };
}
