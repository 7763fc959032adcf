import { pour, vesselFor } from "./batch-pour.ts";
import { batchShower } from "./batch-shown.ts";
import { born, edited } from "../birth.ts";
import type { Handlers } from "../handler.ts";
import { knownHousehold } from "../known.ts";
import { pageOf } from "../pages.ts";
import type { Records } from "../ports.ts";
import { knownRecipe, versionOf } from "../recipes/index.ts";
import { begunReduction } from "./reduction.ts";
import { shelfState } from "../shelf/index.ts";
import { refuse, staleEdit, unknownId } from "../refuse.ts";
import type { BatchRow, RecipeRow, RecipeVersionRow } from "../rows.ts";

export const batchHandlers: Handlers<"listBatches" | "addBatch" | "getBatch" | "editBatch"> = {
  listBatches: ({ house, at, query }) =>
    house.store.transaction(async (records) => {
      await knownHousehold(records, at.household);
      const show = await batchShower(records, house, at.household);
      return pageOf(query, (q) => records.list("batch", at.household, { ...q, newestFirst: true }), show);
    }),

  /** R4: its vessel if new, all pours in order and itself, or none of it. */
  addBatch: ({ house, at, body }) =>
    house.store.transaction(async (records) => {
      await knownHousehold(records, at.household);
      const recipe = await knownRecipe(records, at.household, body.recipeId, ["recipeId"]);
      const version = await knownVersion(records, recipe, body.recipeNumber);
      const head = born(house, at.household);
      const vessel = await vesselFor(records, house, at.household, body.vessel, head.id);
      const batch: BatchRow = {
        ...head,
        name: body.name,
        recipeId: recipe.id,
        recipeNumber: version.number,
        vesselId: vessel.id,
        madeAt: head.createdAt,
        restDays: body.restDays === undefined ? version.body.restDays : body.restDays,
        finishedAt: null,
        note: body.note,
        reduction: null,
      };
      await records.insert("batch", batch);
      await pour(records, house, batch, vessel, body.pours);
      return (await batchShower(records, house, at.household))(batch);
    }),

  getBatch: ({ house, at }) =>
    house.store.transaction(async (records) => {
      const id = at["batch"] ?? "";
      const row = (await records.find("batch", at.household, id)) ?? unknownId("batch", id, ["batch"]);
      return (await batchShower(records, house, at.household))(row);
    }),

  editBatch: ({ house, at, body }) =>
    house.store.transaction(async (records) => {
      const id = at["batch"] ?? "";
      const old = (await records.find("batch", at.household, id)) ?? unknownId("batch", id, ["batch"]);
      const head = edited(house, "batch", old, body.version);
      const finishedAt = body.finished ? (old.finishedAt ?? head.updatedAt) : null;
      const row: BatchRow = {
        ...head,
        name: body.name ?? old.name,
        restDays: body.restDays === undefined ? old.restDays : body.restDays,
        finishedAt: body.finished === undefined ? old.finishedAt : finishedAt,
        note: body.note ?? old.note,
        ...(body.reduction === undefined
          ? {}
          : {
              reduction: begunReduction(
                await shelfState(records, at.household),
                old,
                body.reduction,
                head.updatedAt,
              ),
            }),
      };
      if (!(await records.replace("batch", row))) staleEdit("batch", body.version, row.version);
      return (await batchShower(records, house, at.household))(row);
    }),
};

/** The version asked, or the latest; 404 where the recipe has none of that number. */
export async function knownVersion(
  records: Records,
  recipe: RecipeRow,
  number = recipe.latestNumber,
): Promise<RecipeVersionRow> {
  return (
    (await versionOf(records, recipe, number)) ??
    refuse(404, {
      code: "unknown_recipe_version",
      path: ["recipeNumber"],
      limit: `a version of ${recipe.name}, 1 to ${recipe.latestNumber}`,
      received: number,
      message: `recipe ${recipe.name} requires a version from 1 to ${recipe.latestNumber}, got ${number}`,
    })
  );
}
