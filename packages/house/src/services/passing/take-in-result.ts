import { ResultFile, type RecipeResults, type ResultPreview } from "../../protocol/index.ts";
import { born } from "../birth.ts";
import { canonicalHash, unknownFields } from "../filling/index.ts";
import type { Handlers } from "../handler.ts";
import { knownHousehold } from "../known.ts";
import type { House, Records } from "../ports.ts";
import { knownRecipe } from "../recipes/index.ts";
import { refuse, unknownId } from "../refuse.ts";
import type { RecipeRow } from "../rows.ts";
import { filledIn, kitchensOf } from "./kitchens-of.ts";
import { resultInText } from "./result-in-text.ts";

type Routes = "previewResult" | "takeInResult" | "getRecipeResults" | "removeResult";

/** X7, X8: results that were sent back, looked at first, and pooled for their recipe. */
export const resultHandlers: Handlers<Routes> = {
  previewResult: async ({ house, at, body }) => {
    const result = body.result ?? (await resultInText(body.text ?? ""));
    return house.store.transaction(async (records) => {
      await knownHousehold(records, at.household);
      return (await looked(records, at.household, result)).shown;
    });
  },

  takeInResult: ({ house, at, body: { result, sha256, recipeId } }) =>
    house.store.transaction(async (records) => {
      await knownHousehold(records, at.household);
      const { shown, canonical } = await looked(records, at.household, result);
      if (shown.sha256 !== sha256)
        refuse(409, {
          code: "other_file",
          path: ["sha256"],
          limit: `the result that was looked at, ${sha256}`,
          received: shown.sha256,
          message: `taking in a result requires the one that was looked at, ${sha256}, got ${shown.sha256}`,
        });
      if (shown.already)
        refuse(409, {
          code: "result_already_here",
          path: ["result"],
          limit: "a result that is not here yet",
          received: shown.kitchen,
          message:
            "taking in a result requires one that is not here yet, got one that was taken in before: it would count twice",
        });
      const about = recipeId ?? shown.about?.recipeId;
      if (about === undefined)
        refuse(422, {
          code: "result_of_no_recipe",
          path: ["recipeId"],
          limit: "the recipe that it is of",
          received: shown.recipe.name,
          message: `a result requires the recipe that it is of, got one of ${shown.recipe.name}, whose file never went out from here: say which recipe it is`,
        });
      const recipe = await knownRecipe(records, at.household, about, ["recipeId"]);
      await records.insert("passedFile", {
        ...born(house, at.household),
        recipeId: recipe.id,
        number: recipe.latestNumber,
        way: "back",
        sha256,
        text: canonical,
      });
      return resultsOf(house, records, recipe);
    }),

  getRecipeResults: ({ house, at }) =>
    house.store.transaction(async (records) => {
      const recipe = await knownRecipe(records, at.household, at["recipe"] ?? "", ["recipe"]);
      return resultsOf(house, records, recipe);
    }),

  removeResult: ({ house, at }) =>
    house.store.transaction(async (records) => {
      const recipe = await knownRecipe(records, at.household, at["recipe"] ?? "", ["recipe"]);
      const id = at["result"] ?? "";
      const row = await records.find("passedFile", at.household, id);
      if (row?.way !== "back" || row.recipeId !== recipe.id) unknownId("result", id, ["result"]);
      await records.remove("passedFile", at.household, id);
      return resultsOf(house, records, recipe);
    }),
};

async function looked(
  records: Records,
  household: string,
  result: ResultFile,
): Promise<{ readonly shown: ResultPreview; readonly canonical: string }> {
  const { canonical, sha256 } = await canonicalHash(result, "result");
  const where = { sha256: result.recipe.sha256 };
  const passed = await records.list("passedFile", household, { where });
  const known = passed.find(({ way }) => way === "out") ?? passed.find(({ way }) => way === "in");
  const recipe = known === undefined ? null : await records.find("recipe", household, known.recipeId);
  const [before] = await records.list("passedFile", household, { where: { way: "back", sha256 }, limit: 1 });
  const sheets = result.flights.flatMap((flight) => flight.sheets);
  const shown: ResultPreview = {
    recipe: { name: result.recipe.name, sha256: result.recipe.sha256 },
    about: recipe === null ? null : { recipeId: recipe.id, name: recipe.name },
    kitchen: result.kitchen ?? null,
    slots: filledIn(result),
    abv: result.abv ?? null,
    restDays: result.restDays ?? null,
    flights: result.flights.length,
    sheets: sheets.length,
    tasters: new Set(sheets.map(({ taster }) => taster)).size,
    notes: result.notes ?? "",
    sha256,
    unknownFields: unknownFields(ResultFile, result),
    already: before !== undefined,
    result,
  };
  return { shown, canonical };
}

/** X7: what is said of all together, and what cannot be. */
async function resultsOf(house: House, records: Records, recipe: RecipeRow): Promise<RecipeResults> {
  const pooled = await kitchensOf(house, records, recipe);
  const { kitchens, liked, close } = pooled;
  const out = await records.list("passedFile", recipe.householdId, {
    where: { recipeId: recipe.id, way: "out" },
  });
  const told = kitchens.filter((one) => one.liked !== null || one.close !== null);
  const where = told.length === 1 ? "In one kitchen" : `In ${told.length} kitchens together`;
  const sentence = liked?.sentence ?? close?.sentence;
  return {
    recipeId: recipe.id,
    name: recipe.name,
    headline:
      sentence === undefined
        ? kitchens.length === 0
          ? "Nobody has sent a result yet."
          : "It was made elsewhere, but no blind flight of it has been sent."
        : `${where}: ${sentence}`,
    ...pooled,
    said: [
      ...(told.length > 0
        ? [
            "What stood beside it differs from kitchen to kitchen, so this says how it did among others, not which others it beats.",
          ]
        : []),
      ...(kitchens.some(({ resultId }) => resultId !== null)
        ? [
            "What another kitchen sent is its own word: this house cannot check its sheets, and who tasted there is a number, not a name. It was filled from another shelf, so it is the recipe that is judged, not one blend.",
          ]
        : []),
      ...(told.length > 1
        ? ["Kitchens are counted sheet by sheet; one that sends many counts for many."]
        : []),
    ],
    passedOn: out.length,
  };
}
