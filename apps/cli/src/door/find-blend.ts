import type { Batch, Recipe, SlotOf } from "@partsproof/house/protocol";
import type { AtHousehold, Path } from "./at-household.ts";
import { everyItem } from "./every-item.ts";
import { namedWhiskey } from "./find-on-shelf.ts";
import { matching, pick } from "./pick.ts";

export async function findRecipe(here: AtHousehold, text: string, path: Path): Promise<Recipe> {
  const recipes = await everyItem(here.client, "listRecipes", { household: here.household.id });
  const named = recipes.map((recipe) => ({ id: recipe.id, names: [recipe.name] as [string], recipe }));
  return pick("recipe", text, named, path).recipe;
}

const namedBatch = (batch: Batch) => ({ id: batch.id, names: [batch.name] as [string], batch });

export async function findBatch(here: AtHousehold, text: string, path: Path): Promise<Batch> {
  const batches = await everyItem(here.client, "listBatches", { household: here.household.id });
  return pick("batch", text, batches.map(namedBatch), path).batch;
}

/** What a slot of a recipe names: a whiskey, or a batch made before. */
export async function findSlot(here: AtHousehold, text: string, path: Path): Promise<SlotOf> {
  const at = { household: here.household.id };
  const whiskeys = (await everyItem(here.client, "listWhiskeys", at)).map(namedWhiskey);
  const batches = (await everyItem(here.client, "listBatches", at)).map(namedBatch);
  // A batch may be named after a whiskey it is to come close to; then the whiskey is meant, as on the shelf.
  if (matching(text, whiskeys).length === 0 && matching(text, batches).length > 0) {
    return { kind: "batch", batchId: pick("batch", text, batches, path).id };
  }
  return { kind: "whiskey", whiskeyId: pick("whiskey", text, whiskeys, path).id };
}
