import { cutTokens } from "./cut-tokens.ts";
import { readCondition } from "./read-condition.ts";
import { RULE_LIMITS } from "./rule.ts";
import type { Condition, SlotRule } from "./rule.ts";
import { TokenReader, Unreadable } from "./token-reader.ts";
import type { RuleError } from "./token-reader.ts";

export type ParsedRule =
  | { readonly ok: true; readonly rule: SlotRule }
  | { readonly ok: false; readonly error: RuleError };

/**
 * A rule's readable text as data, or where it stops being a rule. Nothing is thrown, whatever the text. Time in proportion to the
 * text, which may have 2,000 characters. The grammar: docs/slots.md.
 *
 * @example
 * parseRule("wheat >= 16 %, 55 % or stronger, only American oak");
 * // { ok: true, rule: [{ about: "grainShare", grain: "wheat", low: 16, high: null }, …] }
 */
export function parseRule(text: string): ParsedRule {
  const { characters, conditions } = RULE_LIMITS;
  try {
    const reader = new TokenReader(cutTokens(text.slice(0, characters)));
    if (text.length > characters) return tooLong(text.length);
    if (reader.takeIf("anything")) {
      if (reader.next.kind !== "end") reader.fail("the end");
      return { ok: true, rule: [] };
    }
    const rule: Condition[] = [];
    do {
      if (rule.length === conditions) reader.fail(`at most ${conditions} conditions`, "rule_out_of_bounds");
      rule.push(readCondition(reader));
    } while (reader.takeIf(","));
    if (reader.next.kind !== "end") reader.fail("a comma or the end");
    return { ok: true, rule };
  } catch (fault) {
    if (fault instanceof Unreadable) return { ok: false, error: fault.fault };
    throw fault;
  }
}

function tooLong(length: number): ParsedRule {
  const { characters } = RULE_LIMITS;
  const expected = `at most ${characters} characters`;
  const received = `${length} characters`;
  const message = `the rule requires ${expected}, got ${received}`;
  return {
    ok: false,
    error: { code: "rule_out_of_bounds", at: characters, end: length, expected, received, message },
  };
}
