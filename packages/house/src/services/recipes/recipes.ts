import type { Recipe, RecipeVersion } from "../../protocol/index.ts";
import { born, edited } from "../birth.ts";
import type { Handlers } from "../handler.ts";
import { knownHousehold } from "../known.ts";
import { pageOf } from "../pages.ts";
import type { Records } from "../ports.ts";
import { checkRecipeBody } from "./recipe-body.ts";
import { staleEdit, unknownId } from "../refuse.ts";
import type { RecipeRow, RecipeVersionRow } from "../rows.ts";

type Routes =
  | "listRecipes"
  | "addRecipe"
  | "getRecipe"
  | "editRecipe"
  | "addRecipeVersion"
  | "listRecipeVersions";

export const recipeHandlers: Handlers<Routes> = {
  listRecipes: ({ house, at, query }) =>
    house.store.transaction(async (records) => {
      await knownHousehold(records, at.household);
      const latest = new Map<string, RecipeVersionRow>();
      for (const version of await records.list("recipeVersion", at.household)) {
        if (version.number >= (latest.get(version.recipeId)?.number ?? 0))
          latest.set(version.recipeId, version);
      }
      return pageOf<RecipeRow, Recipe>(
        query,
        (q) => records.list("recipe", at.household, q),
        (row) => shownRecipe(row, latest.get(row.id)),
      );
    }),

  addRecipe: ({ house, at, body }) =>
    house.store.transaction(async (records) => {
      await knownHousehold(records, at.household);
      const { name, targetWhiskeyId, ...parts } = body;
      await checkTarget(records, at.household, targetWhiskeyId);
      await checkRecipeBody(records, at.household, parts);
      const row: RecipeRow = { ...born(house, at.household), name, targetWhiskeyId, latestNumber: 1 };
      const version: RecipeVersionRow = {
        ...born(house, at.household),
        recipeId: row.id,
        number: 1,
        body: parts,
      };
      await records.insert("recipe", row);
      await records.insert("recipeVersion", version);
      return shownRecipe(row, version);
    }),

  getRecipe: ({ house, at }) =>
    house.store.transaction(async (records) => {
      const row = await knownRecipe(records, at.household, at["recipe"] ?? "", ["recipe"]);
      return shownRecipe(row, await versionOf(records, row, row.latestNumber));
    }),

  editRecipe: ({ house, at, body }) =>
    house.store.transaction(async (records) => {
      const old = await knownRecipe(records, at.household, at["recipe"] ?? "", ["recipe"]);
      const head = edited(house, "recipe", old, body.version);
      await checkTarget(records, at.household, body.targetWhiskeyId ?? null);
      const row: RecipeRow = {
        ...head,
        name: body.name ?? old.name,
        targetWhiskeyId: body.targetWhiskeyId === undefined ? old.targetWhiskeyId : body.targetWhiskeyId,
      };
      if (!(await records.replace("recipe", row))) staleEdit("recipe", body.version, row.version);
      return shownRecipe(row, await versionOf(records, row, row.latestNumber));
    }),

  /** R2: the old versions stay as they are. */
  addRecipeVersion: ({ house, at, body }) =>
    house.store.transaction(async (records) => {
      const old = await knownRecipe(records, at.household, at["recipe"] ?? "", ["recipe"]);
      const { version: sent, ...parts } = body;
      const row: RecipeRow = { ...edited(house, "recipe", old, sent), latestNumber: old.latestNumber + 1 };
      await checkRecipeBody(records, at.household, parts);
      const version: RecipeVersionRow = {
        ...born(house, at.household),
        recipeId: row.id,
        number: row.latestNumber,
        body: parts,
      };
      if (!(await records.replace("recipe", row))) staleEdit("recipe", sent, row.version);
      await records.insert("recipeVersion", version);
      return shownRecipe(row, version);
    }),

  listRecipeVersions: ({ house, at, query }) =>
    house.store.transaction(async (records) => {
      const row = await knownRecipe(records, at.household, at["recipe"] ?? "", ["recipe"]);
      return pageOf(
        query,
        (q) =>
          records.list("recipeVersion", at.household, {
            ...q,
            where: { recipeId: row.id },
            newestFirst: true,
          }),
        shownVersion,
      );
    }),
};

/** The recipe, or 404. */
export async function knownRecipe(
  records: Records,
  householdId: string,
  id: string,
  path: readonly string[],
): Promise<RecipeRow> {
  return (await records.find("recipe", householdId, id)) ?? unknownId("recipe", id, path);
}

/** One version of a recipe; none of that number is told by the caller. */
export async function versionOf(
  records: Records,
  { householdId, id }: RecipeRow,
  number: number,
): Promise<RecipeVersionRow | undefined> {
  const [row] = await records.list("recipeVersion", householdId, {
    where: { recipeId: id, number },
    limit: 1,
  });
  return row;
}

async function checkTarget(records: Records, householdId: string, id: string | null): Promise<void> {
  if (id !== null && !(await records.find("whiskey", householdId, id)))
    unknownId("whiskey", id, ["targetWhiskeyId"]);
}

export function shownRecipe(row: RecipeRow, latest: RecipeVersionRow | undefined): Recipe {
  if (!latest) throw new Error(`recipe ${row.id} has no version ${row.latestNumber}`);
  const { id, version, name, targetWhiskeyId, createdAt, updatedAt } = row;
  return { id, version, name, targetWhiskeyId, latest: shownVersion(latest), createdAt, updatedAt };
}

function shownVersion({ number, body, createdAt }: RecipeVersionRow): RecipeVersion {
  return { number, ...body, createdAt };
}
