import type { BodyOf } from "../../protocol/index.ts";
import type { Body, EntryThat } from "./entry.ts";
import { idOf, type Play } from "./play.ts";

type RecipeBody = Omit<BodyOf<"addRecipeVersion">, "version">;

function bodyOf(play: Play, { parts, ...body }: Body): RecipeBody {
  const slots = parts.map(([key, count]): RecipeBody["slots"][number] => {
    const batchId = play.known.batches.get(key);
    const of =
      batchId === undefined
        ? { kind: "whiskey" as const, whiskeyId: idOf(play, "whiskeys", key) }
        : { kind: "batch" as const, batchId };
    return { parts: count, of };
  });
  return { ...body, slots };
}

export async function playRecipe(play: Play, entry: EntryThat<"write">): Promise<void> {
  const { recipe, name, target, body } = entry;
  const targetWhiskeyId = target === undefined ? null : idOf(play, "whiskeys", target);
  const { id } = await play.ask("addRecipe", {
    at: { household: play.known.household },
    body: { name, targetWhiskeyId, ...bodyOf(play, body) },
  });
  play.known.recipes.set(recipe, id);
}

export async function playVersion(play: Play, { recipe, body }: EntryThat<"rewrite">): Promise<void> {
  const at = { household: play.known.household, recipe: idOf(play, "recipes", recipe) };
  const { version } = await play.ask("getRecipe", { at });
  await play.ask("addRecipeVersion", { at, body: { version, ...bodyOf(play, body) } });
}
