import type { Reads } from "../ports.ts";

/** Names of the recipes whose latest version holds a whiskey, by its id; those that hold most of it first. */
export type HangingRecipes = ReadonlyMap<string, readonly string[]>;

export async function hangingRecipes(records: Reads, householdId: string): Promise<HangingRecipes> {
  const recipes = new Map((await records.list("recipe", householdId)).map((row) => [row.id, row]));
  const held = new Map<string, { readonly name: string; readonly share: number }[]>();
  for (const { recipeId, number, body } of await records.list("recipeVersion", householdId)) {
    const recipe = recipes.get(recipeId);
    if (recipe === undefined || recipe.latestNumber !== number) continue;
    const all = body.slots.reduce((sum, { parts }) => sum + parts, 0);
    for (const { of, parts } of body.slots)
      if (of.kind === "whiskey" && parts > 0)
        held.set(of.whiskeyId, [
          ...(held.get(of.whiskeyId) ?? []),
          { name: recipe.name, share: parts / all },
        ]);
  }
  return new Map(
    [...held].map(([id, some]) => [
      id,
      some
        .toSorted((a, b) => b.share - a.share || (a.name < b.name ? -1 : 1))
        .map(({ name }) => name)
        // A recipe may hold a whiskey in two slots.
        .filter((name, i, names) => names.indexOf(name) === i),
    ]),
  );
}
