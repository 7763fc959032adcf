import type { BodyOf, LoosenAnswer } from "@partsproof/house/protocol";
import { findRecipe } from "../../door/index.ts";
import { readJsonFile } from "../../files/index.ts";
import { needed, readNumber, readText, yes } from "../../flags/index.ts";
import { householdCommand, reckoning } from "../command.ts";

const asked = {
  within: needed(
    readNumber("within", 0, 10),
    "<0 to 10>",
    "the most it may be off the original, in points of 10",
  ),
  all: yes("with every line filled anew at once, not one"),
};

export const recipeLoosen = householdCommand({
  name: "recipe loosen",
  says: "For each line the loosest rule that keeps the result near, as far as the whiskeys of the household tell.",
  args: { recipe: "id or name" },
  flags: asked,
  example: 'recipe loosen "Two to one" --within 1',
  run: async ({ args, flags }, here) => {
    const { id } = await findRecipe(here, args.recipe, ["recipe"]);
    const at = { household: here.household.id, recipe: id };
    const body = { within: flags.within, changing: flags.all ? ("all" as const) : ("one" as const) };
    const json = await here.client("loosenFromShelf", { at, body });
    return { json, text: () => printLoosened(json, json.names) };
  },
});

export const loosen = reckoning({
  name: "loosen",
  says: "For each line of a recipe file the loosest rule that keeps the result near, tried on a shelf's file.",
  flags: {
    recipe: needed(readText("recipe"), "<file>", "its file, docs/recipe-file.md"),
    shelf: needed(readText("shelf"), "<file>", "the whiskeys that rules are tried on, docs/recipe-file.md"),
    ...asked,
  },
  example: "loosen --recipe saltreach-recipe.json --shelf saltreach-shelf.json --within 1",
  run: async (given, client) => {
    const body = {
      recipe: await readJsonFile(given.recipe, ["recipe"]),
      shelf: await readJsonFile(given.shelf, ["shelf"]),
      within: given.within,
      changing: given.all ? "all" : "one",
    };
    const json = await client("loosenRules", { body: body as BodyOf<"loosenRules"> });
    return { json, text: () => printLoosened(json, {}) };
  },
});

function printLoosened(answer: LoosenAnswer, names: Readonly<Record<string, string>>): string {
  const called = (ids: readonly string[]): string => ids.map((id) => names[id] ?? id).join(", ");
  const lines = answer.slots.flatMap((slot) => [
    `Line ${slot.slot}, in place of ${slot.named ?? "its whiskey"}: ${slot.rule ?? slot.why ?? "no rule"}`,
    `  Lets in      ${called(slot.lets) || "no other"}${slot.farthest === null ? "" : `; the farthest ${slot.farthest.toFixed(2)} off`}`,
    ...(slot.keepsOutNear.length > 0 ? [`  Though near  ${called(slot.keepsOutNear)} kept out`] : []),
    `  Too far      ${called(slot.keepsOut) || "none"}`,
    ...(slot.notJudged.length > 0 ? [`  Not judged   ${called(slot.notJudged)}: too little is known`] : []),
    ...(slot.proven ? [] : ["  Not proven: it took too long to try all."]),
  ]);
  return [
    ...lines,
    `All lines filled anew at once: within ${answer.together.toFixed(2)} of 10, as far as these whiskeys tell.`,
  ].join("\n");
}
