import type { Recipe, ShelfFillAnswer } from "@partsproof/house/protocol";
import { type AtHousehold, findRecipe, findWhiskey } from "../../door/index.ts";
import { issueAt, many, one, readNumber, readText, readVolume, refuse } from "../../flags/index.ts";
import { printFillRecipe } from "../../print/fill-recipe.ts";
import { householdCommand } from "../command.ts";

export const recipeFill = householdCommand({
  name: "recipe fill",
  says: "A recipe filled from the household's own shelf: who can stand where, why others cannot, the closest, what to buy.",
  args: { recipe: "id or name" },
  flags: {
    "water-to": one(readNumber("strength", 1, 100), "<1 to 100>", "both reduced to this % vol"),
    pour: one(readVolume, "<volume>", "so much poured in all, all of it on the shelf"),
    without: many(readText("without"), "<whiskey>", "a whiskey that is not to be used: id or name"),
    keep: one(readText("keep"), "<name>", "write the closest down as a recipe of this name"),
  },
  places: { pouredMl: "pour", waterTo: "water-to", name: "keep" },
  example: 'recipe fill "Two to one" --water-to 46',
  run: async ({ args, flags }, here) => {
    const recipe = await findRecipe(here, args.recipe, ["recipe"]);
    const at = { household: here.household.id, recipe: recipe.id };
    const without: string[] = [];
    for (const [n, text] of flags.without.entries())
      without.push((await findWhiskey(here, text, ["without", n])).id);
    const json = await here.client("fillFromShelf", {
      at,
      body: {
        ...(flags["water-to"] === undefined ? {} : { waterTo: flags["water-to"] }),
        ...(flags.pour === undefined ? {} : { pouredMl: flags.pour }),
        ...(without.length === 0 ? {} : { without }),
      },
    });
    if (flags.keep === undefined) return { json, text: () => printNamed(json) };
    const kept = await keepFilling(here, recipe, json, flags.keep, flags["water-to"] ?? null);
    return { json: kept, text: () => `${printNamed(json)}\n\nKept as ${kept.name}, id ${kept.id}` };
  },
});

/** The closest filling as a recipe of its own, which names the file that it was filled from. */
async function keepFilling(
  here: AtHousehold,
  { latest }: Recipe,
  { best, recipe, slots }: ShelfFillAnswer,
  name: string,
  waterTo: number | null,
): Promise<Recipe> {
  const lines = latest.slots.filter(({ parts }) => parts > 0);
  const filled = slots.flatMap(({ parts }, n) => {
    const whiskeyId = best?.ids[n] ?? null;
    if (whiskeyId === null) return [];
    const reason = lines[n]?.reason;
    return [
      {
        parts,
        of: { kind: "whiskey" as const, whiskeyId },
        ...(reason === undefined ? {} : { reason }),
        from: n + 1,
      },
    ];
  });
  if (filled.length === 0)
    return refuse(
      issueAt(["keep"], "nothing_filled", "a whiskey on the shelf that can stand in a line", null),
    );
  return here.client("addRecipe", {
    at: { household: here.household.id },
    body: {
      name,
      slots: filled,
      waterTo: waterTo === null ? latest.waterTo : { basis: "abv20", value: waterTo },
      restDays: latest.restDays,
      oak: latest.oak,
      lineage: [recipe],
    },
  });
}

/** The same words as for a shelf's file, whiskeys by their names. */
function printNamed(answer: ShelfFillAnswer): string {
  const text = printFillRecipe(answer);
  return text.replaceAll(/[0-9a-hjkmnp-tv-z]{26}/gu, (id) => answer.names[id] ?? id);
}
