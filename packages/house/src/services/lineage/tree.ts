import { volumeOf } from "@partsproof/core/ledger";
import type { Lineage, LineageBatch, SlotOf } from "../../protocol/index.ts";
import { batchState } from "../batches/index.ts";
import type { FlightEvidence } from "../evidence/index.ts";
import type { BatchRow, RecipeRow, RecipeVersionRow } from "../rows.ts";
import { batchNow, batchPasts, liquidLabel, NO_PAST, type Shelf, shownContents } from "../shelf/index.ts";
import { changesOf } from "./changes.ts";
import { playedIn } from "./played-in.ts";

interface Rows {
  readonly shelf: Shelf;
  readonly recipes: readonly RecipeRow[];
  readonly versions: readonly RecipeVersionRow[];
  readonly flights: readonly FlightEvidence[];
  readonly now: Date;
}

/** T1: every recipe with its versions in order, what was made of each, and what that went into. */
export function treeOf({ shelf, recipes, versions, flights, now }: Rows): Lineage {
  const labelOf = (of: SlotOf): string => {
    if (of.kind === "whiskey") return liquidLabel(shelf, of.whiskeyId);
    if (of.kind === "batch") return shelf.batches.get(of.batchId)?.name ?? "a batch that was undone";
    return of.named?.name ?? "whatever keeps the rule";
  };
  const pasts = batchPasts(shelf);
  const names = new Map(recipes.map(({ id, name }) => [id, name]));
  const usedIn = new Map<string, LineageBatch["usedIn"]>();
  for (const { recipeId, number, body } of versions)
    for (const { of, parts } of body.slots)
      if (of.kind === "batch" && parts > 0)
        usedIn.set(of.batchId, [
          ...(usedIn.get(of.batchId) ?? []),
          { recipeId, name: names.get(recipeId) ?? "", number },
        ]);
  const shownBatch = (row: BatchRow): LineageBatch => {
    const made = shownContents(shelf, (pasts.get(row.id) ?? NO_PAST).made);
    return {
      batchId: row.id,
      name: row.name,
      madeAt: row.madeAt,
      state: batchState(row, now),
      ml: made.volumeMl,
      abv20: made.abv20,
      leftMl: volumeOf(batchNow(shelf, row)),
      usedIn: usedIn.get(row.id) ?? [],
      flights: playedIn(flights, `batch:${row.id}`),
    };
  };
  return {
    recipes: recipes.map(({ id, name, createdAt }) => {
      const own = versions.filter(({ recipeId }) => recipeId === id).toSorted((a, b) => a.number - b.number);
      return {
        recipeId: id,
        name,
        createdAt,
        versions: own.map((version, i) => ({
          number: version.number,
          createdAt: version.createdAt,
          parts: version.body.slots.map(({ of, parts }) => ({
            label: labelOf(of),
            parts,
            batchId: of.kind === "batch" ? of.batchId : null,
          })),
          changes: i === 0 ? [] : changesOf(own[i - 1]?.body ?? version.body, version.body, labelOf),
          note: version.body.note,
          batches: [...shelf.batches.values()]
            .filter(({ recipeId, recipeNumber }) => recipeId === id && recipeNumber === version.number)
            .map(shownBatch),
        })),
      };
    }),
  };
}

/** T4: a recipe, all whose batches it has in a slot, and all that have a batch of it, however far. */
export function kinOf({ recipes }: Lineage, recipeId: string): Lineage {
  const madeBy = new Map(
    recipes.flatMap((recipe) =>
      recipe.versions.flatMap(({ batches }) =>
        batches.map(({ batchId }) => [batchId, recipe.recipeId] as const),
      ),
    ),
  );
  const links = recipes.flatMap(({ recipeId: into, versions }) =>
    versions.flatMap(({ parts }) =>
      parts.flatMap(({ batchId }) => {
        const from = batchId === null ? undefined : madeBy.get(batchId);
        return from === undefined ? [] : [[from, into] as const];
      }),
    ),
  );
  const kin = new Set([recipeId, ...reached(recipeId, links), ...reached(recipeId, links.map(turned))]);
  return { recipes: recipes.filter((recipe) => kin.has(recipe.recipeId)) };
}

const turned = ([from, into]: readonly [string, string]) => [into, from] as const;

function reached(start: string, links: readonly (readonly [string, string])[]): ReadonlySet<string> {
  const seen = new Set<string>();
  const open = [start];
  for (let at = open.pop(); at !== undefined; at = open.pop())
    for (const [from, into] of links)
      if (from === at && !seen.has(into)) {
        seen.add(into);
        open.push(into);
      }
  return seen;
}
