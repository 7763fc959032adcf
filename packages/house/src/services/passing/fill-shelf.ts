import type { BodyRead, FillWhiskey, RecipeFile } from "../../protocol/index.ts";
import { checkRecipe, fillRecipe, loosenRecipe, originalOf } from "../filling/index.ts";
import type { Handlers } from "../handler.ts";
import { knownHousehold } from "../known.ts";
import type { House } from "../ports.ts";
import { knownRecipe } from "../recipes/index.ts";
import { shelfState, whiskeyLabel } from "../shelf/index.ts";
import { recipeFileOf } from "./recipe-file-of.ts";
import { shelfWhiskeys } from "./shelf-whiskeys.ts";

/** X4, X5: reads first and reckons after: nobody waits for sums in the middle of a transaction. */
export const fillShelfHandlers: Handlers<"fillFromShelf" | "loosenFromShelf"> = {
  fillFromShelf: async ({ house, at, body }) => {
    const { file, sha256, there, couldBuy, names } = await read(house, at);
    const { without = [], ...asked } = body;
    const shelf = { whiskeys: there.filter(({ id }) => !without.includes(id)) };
    const buyable = couldBuy.filter(({ id }) => !without.includes(id));
    const answer = fillRecipe({ recipe: file, shelf, couldBuy: buyable, ...given(asked) });
    const { abv20: abv, youngestYears: ageYears } = originalOf(file);
    return {
      ...answer,
      recipe: { name: file.name, sha256 },
      names,
      original: { abv, ageYears },
      couldBuy: buyable.length,
    };
  },

  loosenFromShelf: async ({ house, at, body }) => {
    const { file, there, couldBuy, names } = await read(house, at);
    // Known is what somebody wrote down here, whether or not any is left.
    const whiskeys = [...there, ...couldBuy];
    return { ...loosenRecipe({ recipe: file, shelf: { whiskeys }, ...body }), names };
  },
};

const given = (
  asked: Omit<BodyRead<"fillFromShelf">, "without">,
): Omit<BodyRead<"fillFromShelf">, "without"> =>
  Object.fromEntries(Object.entries(asked).filter(([, value]) => value !== undefined));

interface Read {
  readonly file: RecipeFile;
  readonly sha256: string;
  readonly there: FillWhiskey[];
  readonly couldBuy: FillWhiskey[];
  readonly names: Record<string, string>;
}

function read(
  house: House,
  at: { readonly household: string; readonly [key: string]: string },
): Promise<Read> {
  return house.store.transaction(async (records) => {
    const { currency } = await knownHousehold(records, at.household);
    const recipe = await knownRecipe(records, at.household, at["recipe"] ?? "", ["recipe"]);
    const { file } = await recipeFileOf(records, recipe);
    const { sha256 } = await checkRecipe(file);
    const shelf = await shelfState(records, at.household);
    const { there, couldBuy } = shelfWhiskeys(shelf, currency);
    return {
      file,
      sha256,
      there: [...there],
      couldBuy: [...couldBuy],
      names: Object.fromEntries([...shelf.whiskeys.values()].map((row) => [row.id, whiskeyLabel(row)])),
    };
  });
}
