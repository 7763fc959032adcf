import type { Against, ProfileBoard, ProfileLine } from "../../protocol/index.ts";
import type { AllObserved } from "./observed.ts";
import { LEVEL } from "./profile-lines.ts";

const METHOD =
  "observed: strengths set and words read on locked sheets, each taster's use of the scale learned over all that others spoke of too and taken out; intervals of 95 % from the spread of words, tasters and their differences, taken as normal; differences by the normal law, two-sided, Holm over all comparisons of the board";

/** The scale of those who said something of these liquids. */
export function scalesOf(
  { scales }: AllObserved,
  tasters: ReadonlySet<string>,
  names: ReadonlyMap<string, string>,
): ProfileBoard["scales"] {
  return [...scales]
    .filter(([tasterId]) => tasters.has(tasterId))
    .map(([tasterId, scale]) => ({ tasterId, taster: names.get(tasterId) ?? "", ...scale }));
}

export function board(
  headline: string,
  lines: readonly ProfileLine[],
  compared: readonly Against[],
  scales: ProfileBoard["scales"],
): ProfileBoard {
  return {
    headline,
    lines: [...lines],
    against: [...compared],
    scales,
    level: LEVEL,
    method: METHOD,
  };
}
