import { DISCRIMINATION } from "@partsproof/core/sensory";
import type { FlightDesign, QuestionId } from "../../protocol/index.ts";
import { inSets } from "./question.ts";

const sum = (grams: readonly number[]): number => grams.reduce((all, each) => all + each, 0);

/**
 * Grams of ethanol that one taster gets at most, from the grams in a glass of each name on offer (and of those that a drawn
 * repeat may be of), strongest first. It reads the
 * layout and the offer only, so it tells nothing of what is in which glass.
 */
export const alcoholAtMost =
  (question: QuestionId, design: Omit<FlightDesign, "said">) =>
  (once: readonly number[], again: readonly number[]): number => {
    const { method, setsEach, glassesEach, reference, repeats } = design;
    const [first = 0, second = 0] = once;
    if (inSets(question) && method !== null) {
      // The order with the most of the stronger one; an order and its mirror are both drawn.
      const most = Math.max(...DISCRIMINATION[method].orders.map((order) => order.split("A").length - 1));
      const size = DISCRIMINATION[method].orders[0]?.length ?? 0;
      return setsEach * (most * first + (size - most) * second);
    }
    if (question === "agree_with_myself") return 2 * sum(once.slice(0, glassesEach / 2));
    const repeated = sum(again.slice(0, repeats));
    return sum(once.slice(0, glassesEach - repeats)) + repeated + (reference ? first : 0);
  };
