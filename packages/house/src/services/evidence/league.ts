import type { League } from "../../protocol/index.ts";
import type { House } from "../ports.ts";
import type { BatchRow, RecipeRow } from "../rows.ts";
import { countedOf } from "./counted.ts";
import { labelsOf, ofLiking } from "./evidence-lines.ts";
import type { FlightEvidence } from "./flight-evidence.ts";
import { rankingsOf } from "./rankings-of.ts";
import { claimOf, worthsFound } from "./worths-found.ts";

/** What was mixed here: a batch, or a blend in a topped-up vessel. */
const isOwn = (key: string): boolean => key.startsWith("batch:") || key.startsWith("vessel:");

/** Own blends beside each other, by every ranking of liking; bought whiskeys stand in the sums and not in the league. */
export function league(
  house: House,
  flights: readonly FlightEvidence[],
  batches: readonly BatchRow[],
  recipes: readonly RecipeRow[],
): League {
  const rankings = rankingsOf(ofLiking(flights));
  const worths = worthsFound(house, { rankings, labels: labelsOf(flights), among: isOwn });
  const batchOf = new Map(batches.map((batch) => [`batch:${batch.id}`, batch]));
  const recipeOf = new Map(recipes.map((recipe) => [recipe.id, recipe]));
  return {
    headline:
      worths === null
        ? "A league takes two blends of your own that were ranked"
        : claimOf(worths.best.sentence),
    counted: countedOf(rankings),
    worths,
    blends: (worths?.items ?? []).map(({ key }) => {
      const recipe = recipeOf.get(batchOf.get(key)?.recipeId ?? "");
      return { key, recipeId: recipe?.id ?? null, recipe: recipe?.name ?? null };
    }),
  };
}
