export { parseRule } from "./parse-rule.ts";
export type { ParsedRule } from "./parse-rule.ts";
export { printCondition, printRule } from "./print-rule.ts";
export { RULE_LIMITS } from "./rule.ts";
export type { Bounds, Condition, SlotRule } from "./rule.ts";
export type { RuledWhiskey } from "./ruled-whiskey.ts";
export type { RuleError } from "./token-reader.ts";
export { sameVerdict, verdictOf } from "./verdict.ts";
export type { Verdict } from "./verdict.ts";
