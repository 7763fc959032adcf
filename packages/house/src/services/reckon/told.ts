import { giveOrTake, headline, type Uncertain } from "@partsproof/core/uncertainty";
import type { UncertainFigure } from "../../protocol/index.ts";

/** An uncertain result as the API gives it. */
export function told(result: Uncertain): UncertainFigure {
  const { value, by } = giveOrTake(result);
  return {
    value: result.value,
    standardUncertainty: result.standardUncertainty,
    interval95: [...result.interval95],
    said: { value, giveOrTake: by },
    largest: headline(result.budget),
    budget: result.budget.map((share) => ({ ...share })),
  };
}
