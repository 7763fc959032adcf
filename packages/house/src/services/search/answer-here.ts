import type { Question, QuestionKind, Questions, Searching, Watch } from "../searching.ts";
import { findPurchases, findRulePrices, findTradeOff } from "./around-recipes.ts";
import { findRecipes } from "./find-recipes.ts";

/** The answer, in this thread. Only recipes keep to the time they are given. */
export async function answerHere<K extends QuestionKind>(
  question: Question<K>,
  watch: Watch,
): Promise<Questions[K]["answer"]> {
  // A question of one kind is one of the questions; the compiler does not see that through K.
  const asked = question as Question;
  switch (asked.kind) {
    case "recipes":
      return findRecipes(asked.problem, watch);
    case "tradeOff":
      return findTradeOff(asked.problem, asked.of);
    case "rulePrices":
      return findRulePrices(asked.problem);
    case "purchases":
      return findPurchases(asked);
  }
}

export const searchingHere: Searching = { answer: answerHere };
