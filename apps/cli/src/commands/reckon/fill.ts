import type { BodyOf, Client } from "@partsproof/house/protocol";
import { FILL_LIMITS } from "@partsproof/house/protocol";
import { readJsonFile } from "../../files/index.ts";
import {
  issueAt,
  one,
  readLevelAt,
  readNumber,
  readStrength,
  readText,
  readVolume,
  readWhole,
  refuse,
} from "../../flags/index.ts";
import { printFillRecipe } from "../../print/fill-recipe.ts";
import { printFill } from "../../print/reduced.ts";
import { type Answer, reckoning } from "../command.ts";

const flags = {
  held: one(readLevelAt, "<volume>@<strength>", "a vessel: what is in it, 350ml@62.4"),
  with: one(readStrength, "<strength>", "a vessel: what it is filled with; water is 0"),
  vessel: one(readVolume, "<volume>", "a vessel: what it holds, at 20 °C"),
  recipe: one(readText("recipe"), "<file>", "a recipe: its file, docs/recipe-file.md"),
  shelf: one(readText("shelf"), "<file>", "a recipe: the shelf it is filled from, docs/recipe-file.md"),
  "could-buy": one(
    readText("could-buy"),
    "<file>",
    "a recipe: bottles to try in empty slots, a file like the shelf's",
  ),
  "water-to": one(readNumber("strength", 1, 100), "<1 to 100>", "a recipe: both reduced to this % vol"),
  pour: one(readVolume, "<volume>", "a recipe: so much poured in all, all of it on the shelf"),
  top: one(
    readWhole("top", 1, FILL_LIMITS.top),
    "<1 to 20>",
    "a recipe: how many fillings, 1 where left out",
  ),
};

export const fill = reckoning({
  name: "fill",
  says: "A vessel filled exactly, contraction counted; or a recipe filled from a shelf, proven closest.",
  flags,
  example: "fill --held 350ml@62.4 --with 46 --vessel 700ml",
  places: { held: "held", with: "with", vesselMl: "vessel" },
  run: async (given, client) => {
    if ((given.recipe ?? given.shelf) !== undefined) return fillRecipe(given, client);
    const { held, with: added, vessel } = given;
    if (held === undefined)
      return refuse(issueAt(["held"], "flag_missing", "--held <volume>@<strength> or --recipe <file>", null));
    if (added === undefined) return refuse(issueAt(["with"], "flag_missing", "--with <strength>", null));
    if (vessel === undefined) return refuse(issueAt(["vessel"], "flag_missing", "--vessel <volume>", null));
    const json = await client("reckonFill", { body: { held, with: added, vesselMl: vessel } });
    return { json, text: () => printFill(json) };
  },
});

interface Given {
  readonly recipe: string | undefined;
  readonly shelf: string | undefined;
  readonly "could-buy": string | undefined;
  readonly "water-to": number | undefined;
  readonly pour: number | undefined;
  readonly top: number | undefined;
}

async function fillRecipe(given: Given, client: Client): Promise<Answer> {
  const { recipe, shelf, "could-buy": couldBuy, "water-to": waterTo, pour, top } = given;
  if (recipe === undefined) return refuse(issueAt(["recipe"], "flag_missing", "--recipe <file>", null));
  if (shelf === undefined) return refuse(issueAt(["shelf"], "flag_missing", "--shelf <file>", null));
  // Not read by us: the house's schema says what is wrong with them, field by field.
  const body = {
    recipe: await readJsonFile(recipe, ["recipe"]),
    shelf: await readJsonFile(shelf, ["shelf"]),
    ...(couldBuy === undefined
      ? {}
      : {
          couldBuy: ((await readJsonFile(couldBuy, ["could-buy"])) as { whiskeys?: unknown } | null)
            ?.whiskeys,
        }),
    ...(waterTo === undefined ? {} : { waterTo }),
    ...(pour === undefined ? {} : { pouredMl: pour }),
    ...(top === undefined ? {} : { top }),
  } as BodyOf<"fillRecipe">;
  const json = await client("fillRecipe", { body });
  return { json, text: () => printFillRecipe(json) };
}
