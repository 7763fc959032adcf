import { startSearch } from "@partsproof/core/blending";
import type { SearchAnswer, SearchProblem } from "../../protocol/index.ts";
import type { Watch } from "../searching.ts";
import { coreProblem, unusedWeights } from "./core-problem.ts";
import { shownRecipes, toldApart } from "./shown-recipes.ts";
import { toldConflict } from "./told-conflict.ts";

const DEFAULT_TOP = 20;
/** How long a search keeps its thread before others have their turn, and how many steps go between two looks at the clock. */
const TURN_MS = 20;
const STEPS = 16;

/**
 * The best recipes for a problem: the whole list proven, or, when time runs out, the best so far and the gap that is proven.
 *
 * @throws DOMException AbortError when its signal is aborted
 */
export async function findRecipes(problem: SearchProblem, watch: Watch): Promise<SearchAnswer> {
  const begun = performance.now();
  const asked = coreProblem(problem);
  const running = startSearch(asked, problem.top ?? DEFAULT_TOP);
  const end = begun + watch.seconds * 1000;
  let turnEnds = begun + TURN_MS;
  for (let progress = running.step(STEPS); !progress.done; progress = running.step(STEPS)) {
    const now = performance.now();
    if (now >= end) break;
    if (now < turnEnds) continue;
    watch.onProgress?.(progress);
    await new Promise((resolve) => setTimeout(resolve));
    if (watch.signal?.aborted === true) throw new DOMException("whoever asked has gone", "AbortError");
    turnEnds = performance.now() + TURN_MS;
  }
  const found = running.result();
  const none = found.provenOptimal && found.recipes.length === 0;
  return {
    recipes: shownRecipes(asked, found.recipes),
    provenOptimal: found.provenOptimal,
    gap: Number.isFinite(found.gap) ? found.gap : null,
    nodes: found.nodes,
    elapsedMs: performance.now() - begun,
    ...(none ? toldConflict(asked) : {}),
    unknown: found.unknown.map((value) => ({ ...value })),
    unusedWeights: [...unusedWeights(problem.target)],
    cannotTellApart: toldApart(asked, found.recipes),
  };
}
