import type { QuestionAsk } from "./question-needs.ts";

/**
 * Glasses of each whiskey that so many trials take at most: two whiskeys for a discrimination (each equally often, one more
 * where the sets are odd), otherwise one entry a glass of the flight.
 *
 * @example glassesPoured({ question: "tell_apart", method: "triangle", sides: 1, share: 50 }, 16) // [24, 24]
 */
export function glassesPoured(ask: QuestionAsk, trials: number): number[] {
  switch (ask.question) {
    case "tell_apart":
    case "changed": {
      const inTwoSets = { triangle: 3, duo_trio: 3, paired: 2, tetrad: 4 }[ask.method];
      const each = Math.ceil((inTwoSets * trials) / 2);
      return [each, each];
    }
    case "agree_with_myself":
      return Array.from({ length: ask.glasses }, () => 2 * trials);
    case "like_best":
    case "how_close":
    case "which_is_which":
      return Array.from({ length: ask.glasses }, () => trials);
  }
}
