import { conflictOf, neverNeeded, priceOfRules, tradeOff, whatToBuy } from "@partsproof/core/blending";
import type { Because, Why } from "./messages.ts";

/** Points of a trade-off that a page can show. */
const MOST_POINTS = 12;

/** Answers one slow question. It takes as long as it takes: for a worker that can be ended. */
export function answerWhy(why: Why): Because {
  switch (why.kind) {
    case "conflict":
      return { kind: "conflict", conflict: conflictOf(why.problem) };
    case "prices":
      return { kind: "prices", prices: priceOfRules(why.problem) };
    case "trade":
      return { kind: "trade", traded: why.traded, tradeOff: tradeOff(why.problem, why.traded, MOST_POINTS) };
    case "buy": {
      const targets = [why.problem.target];
      return {
        kind: "buy",
        purchases: whatToBuy(why.problem, targets, why.candidates),
        neverNeeded: neverNeeded(why.problem, targets, why.top),
        top: why.top,
      };
    }
  }
}
