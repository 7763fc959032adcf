import { neverNeeded, priceOfRules, search, tradeOff, whatToBuy } from "@partsproof/core/blending";
import type {
  PurchasesAnswer,
  PurchasesDraft,
  RulePricesAnswer,
  SearchProblem,
  TradeOffAnswer,
} from "../../protocol/index.ts";
import { coreProblem, coreTarget, coreWhiskey } from "./core-problem.ts";
import { shownRecipe, shownRecipes } from "./shown-recipes.ts";

// Each of these is several proven searches. None stops half-way: what they answer is whole, or whoever asked ends their thread.

export function findTradeOff(
  problem: SearchProblem,
  of: "price" | "bottles" | "parts" | "age",
): TradeOffAnswer {
  const begun = performance.now();
  const asked = coreProblem(problem);
  const { points, complete } = tradeOff(asked, of);
  return { points: shownRecipes(asked, points), complete, elapsedMs: performance.now() - begun };
}

export function findRulePrices(problem: SearchProblem): RulePricesAnswer {
  const begun = performance.now();
  const asked = coreProblem(problem);
  const [best] = search(asked, 1).recipes;
  const rules = priceOfRules(asked).map(({ name, costs, without }) => ({
    rule: name,
    costs,
    without: shownRecipe(asked, without),
  }));
  return { best: shownRecipe(asked, best), rules, elapsedMs: performance.now() - begun };
}

const DEFAULT_TOP = 20;

export function findPurchases({ problem, targets, candidates }: PurchasesDraft): PurchasesAnswer {
  const begun = performance.now();
  const asked = coreProblem(problem);
  const wanted = (targets ?? [problem.target]).map(coreTarget);
  const purchases = whatToBuy(asked, wanted, candidates.map(coreWhiskey)).map(({ id, gain, recipes }) => {
    const candidate = candidates.find((one) => one.id === id);
    const with1 = candidate ? { ...asked, whiskeys: [...asked.whiskeys, coreWhiskey(candidate)] } : asked;
    return {
      id,
      gain,
      recipes: recipes.map((recipe, t) =>
        shownRecipe({ ...with1, target: wanted[t] ?? asked.target }, recipe),
      ),
    };
  });
  const idle = neverNeeded(asked, wanted, problem.top ?? DEFAULT_TOP);
  return { purchases, neverNeeded: [...idle], elapsedMs: performance.now() - begun };
}
