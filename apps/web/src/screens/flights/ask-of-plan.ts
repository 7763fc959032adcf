import type { QuestionAsk } from "@partsproof/core/sensory";
import { AGAIN_PERCENT, SHARE_PERCENT } from "./asked-of-panel.data.ts";
import { glassesOf, type Plan } from "./plan.ts";

/** The plan's question with what it is to find, or what the plan lacks before it can be asked, in words. */
export function askOfPlan(
  plan: Plan,
): { readonly ok: true; readonly ask: QuestionAsk } | { readonly ok: false; readonly lacks: string } {
  const glasses = glassesOf(plan);
  const kinds = plan.pours.length;
  switch (plan.question) {
    case "tell_apart":
    case "changed":
      return kinds === 2
        ? {
            ok: true,
            ask: { question: plan.question, method: plan.method, sides: sidesOf(plan), share: SHARE_PERCENT },
          }
        : { ok: false, lacks: "Choose the two that are to be told apart." };
    case "agree_with_myself":
      return kinds >= 2
        ? { ok: true, ask: { question: "agree_with_myself", glasses: kinds, again: AGAIN_PERCENT } }
        : { ok: false, lacks: "Choose at least two glasses; each is poured twice." };
    case "how_close":
      if (glasses >= 2 && plan.targetNameId !== null)
        return { ok: true, ask: { question: "how_close", glasses, share: SHARE_PERCENT } };
      return { ok: false, lacks: "Pour the target among the others, and name it under The target." };
    case "which_is_which": {
      const known = Math.ceil(glasses / 2);
      if (glasses < 2) break;
      const distractors = plan.distractors.length;
      return { ok: true, ask: { question: "which_is_which", glasses, distractors, known } };
    }
    case "like_best":
      if (glasses < 2) break;
      return { ok: true, ask: { question: "like_best", glasses, share: SHARE_PERCENT } };
  }
  return { ok: false, lacks: "Choose at least two glasses." };
}

/** One-sided unless either of the two may have more of what is asked for. */
function sidesOf({ method, pouring, pours, expectedVesselId }: Plan): 1 | 2 {
  const said = pouring !== "alone" && pours.some(({ vesselId }) => vesselId === expectedVesselId);
  return method === "paired" && !said ? 2 : 1;
}

/** What it is to find, in words: without it no number of tasters means anything. */
export function toFind(ask: QuestionAsk): string {
  switch (ask.question) {
    case "like_best":
      return `${ask.share} % of the sheets put the same glass first, the others choose by luck`;
    case "how_close":
      return `${ask.share} % of the sheets put the target first, the others choose by luck`;
    case "which_is_which":
      return `a taster knows ${ask.known} of the ${ask.glasses} glasses and guesses the rest`;
    case "tell_apart":
    case "changed":
      return `${ask.share} % of the sets are really told apart, the others are guessed`;
    case "agree_with_myself":
      return `of two glasses side by side, ${ask.again} % are put the same way again`;
  }
}
