import { type BodyOf, SharedAs } from "@partsproof/house/protocol";
import { chooseHousehold, findRecipe } from "../../door/index.ts";
import { readJsonFile, writeWhole } from "../../files/index.ts";
import {
  many,
  needed,
  one,
  onlyOne,
  readAddress,
  readText,
  readVolume,
  readWord,
  yes,
} from "../../flags/index.ts";
import { maybeAtHousehold } from "../command.ts";

export const recipeShare = maybeAtHousehold({
  name: "recipe share",
  says: "A recipe to be passed on without a service: a link that holds all of it, a page that works from a disk, text, a picture, a square code.",
  maybe: { recipe: "id or name of one of the house; or --file" },
  flags: {
    as: needed(
      readWord("as", SharedAs.options),
      `<${SharedAs.options.join("|")}>`,
      "what it is passed on as",
    ),
    file: one(readText("file"), "<file>", "a recipe file: docs/recipe-file.md"),
    to: one(readText("to"), "<file>", "a file that is not there yet; else standard output"),
    at: one(readAddress, "<address>", "the address a link names; any house opens it all the same"),
    bottle: one(readVolume, "<volume>", "the bottle that amounts are written for; 700 mL where left out"),
    credit: many(readText("credit"), "<name>", "who is to be named"),
    "with-note": yes("the recipe's own note too"),
  },
  places: { address: "at", bottleMl: "bottle", recipe: "file", credits: "credit" },
  example: "recipe share --file saltreach-recipe.json --as markdown",
  run: async ({ args, flags }, which, { plain, open }) => {
    onlyOne({ recipe: args.recipe, file: flags.file });
    const { as, to, at, bottle } = flags;
    const { client, recipe } =
      args.recipe === undefined
        ? { client: await plain(), recipe: await readJsonFile(flags.file ?? "", ["file"]) }
        : await ofHouse(args.recipe);
    const shared = await client("shareRecipe", {
      body: {
        recipe: recipe as BodyOf<"shareRecipe">["recipe"],
        as,
        ...(at === undefined ? {} : { address: at }),
        ...(bottle === undefined ? {} : { bottleMl: bottle }),
      },
    });
    if (to === undefined) return { json: shared, text: () => shared.text.trimEnd() };
    const bytes = await writeWhole(to, shared.text, ["to"]);
    return { json: { file: to, bytes, ...shared }, text: () => `The recipe as ${as}: ${to}` };

    async function ofHouse(named: string) {
      const house = await open(which);
      const here = { client: house.client, household: await chooseHousehold(house.client, which.household) };
      const { id } = await findRecipe(here, named, ["recipe"]);
      const body = {
        withNote: flags["with-note"],
        ...(flags.credit.length === 0 ? {} : { credits: [...flags.credit] }),
      };
      const file = await house.client("exportRecipe", {
        at: { household: here.household.id, recipe: id },
        body,
      });
      return { client: house.client, recipe: file as unknown };
    }
  },
});
