import type { Progress } from "@partsproof/core/blending";
import type {
  PurchasesAnswer,
  PurchasesDraft,
  RulePricesAnswer,
  SearchAnswer,
  SearchProblem,
  TradeOffAnswer,
} from "../protocol/index.ts";

/** What can be asked of a search, and what it answers. All of it is plain data, so that a thread can be asked. */
export interface Questions {
  readonly recipes: { readonly asked: { readonly problem: SearchProblem }; readonly answer: SearchAnswer };
  readonly tradeOff: {
    readonly asked: { readonly problem: SearchProblem; readonly of: "price" | "bottles" | "parts" | "age" };
    readonly answer: TradeOffAnswer;
  };
  readonly rulePrices: {
    readonly asked: { readonly problem: SearchProblem };
    readonly answer: RulePricesAnswer;
  };
  readonly purchases: { readonly asked: PurchasesDraft; readonly answer: PurchasesAnswer };
}
export type QuestionKind = keyof Questions;
export type Question<K extends QuestionKind = QuestionKind> = {
  readonly [N in K]: { readonly kind: N } & Questions[N]["asked"];
}[K];

/** How a search is watched and stopped. */
export interface Watch {
  readonly seconds: number;
  readonly signal?: AbortSignal;
  readonly onProgress?: (progress: Progress) => void;
}

/** Where searches run, so that the house can go on answering meanwhile. */
export interface Searching {
  /** @throws DOMException AbortError when its signal is aborted; HouseRefusal when it takes too long or too many wait. */
  answer<K extends QuestionKind>(question: Question<K>, watch: Watch): Promise<Questions[K]["answer"]>;
}
