export {
  type Aim,
  INTENSITY_STEP,
  MOST_WEIGHT,
  NO_AIM,
  weightOf,
  withIntensity,
  withWeight,
} from "./aim.ts";
export { attributeName } from "@partsproof/core/sensory";
export type { Because, Found, Shown, Why, Wish } from "./messages.ts";
export { lawsUsed, problemOf, tastedTogetherAt } from "./problem-of.ts";
export { LEAST_GAP, printDistance, printGap, proofWords } from "./proof-words.ts";
export { readRules } from "./read-rules.ts";
export { ruleWords } from "./rule-words.ts";
export { FIRST_RULES, type RuleKey, type Rules, stands, toggled } from "./rules.ts";
export { type Shelf, shelfOf } from "./shelf-of.ts";
export { type Taste, tasteOf } from "./taste.ts";
export { useGently } from "./use-gently.ts";
export { useQuiet } from "./use-quiet.ts";
export { type Seeking, TOP, useSearch } from "./use-search.ts";
export { useWhy } from "./use-why.ts";
