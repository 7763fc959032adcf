import fc from "fast-check";
import { expect, test } from "vitest";
import { hostileRule, slotRule } from "./fixtures/rules.ts";
import { parseRule } from "./parse-rule.ts";
import { printRule } from "./print-rule.ts";
import { RULE_LIMITS } from "./rule.ts";

const long =
  (globalThis as { process?: { env?: Record<string, string> } }).process?.env?.["PARTSPROOF_LONG"] === "1";
const CASES = long ? 100_000 : 5000;

test("L1 a rule printed and read is the same rule", () => {
  fc.assert(
    fc.property(slotRule, (rule) => {
      const text = printRule(rule);
      fc.pre(text.length <= RULE_LIMITS.characters);
      expect(parseRule(text)).toEqual({ ok: true, rule });
    }),
    { numRuns: long ? 20_000 : 1500, seed: 9 },
  );
});

test(`L2 ${CASES} random and hostile texts: a rule or one located error, never a throw`, {
  timeout: 600_000,
}, () => {
  let read = 0;
  let refused = 0;
  fc.assert(
    fc.property(hostileRule, (text) => {
      const parsed = parseRule(text);
      if (parsed.ok) {
        read += 1;
        // What was read means what its canonical form means.
        expect(parseRule(printRule(parsed.rule))).toEqual(parsed);
        return;
      }
      refused += 1;
      const { at, end, expected, received, message } = parsed.error;
      expect(at).toBeGreaterThanOrEqual(0);
      expect(end).toBeGreaterThanOrEqual(at);
      expect(end).toBeLessThanOrEqual(text.length);
      if (
        at < end &&
        at < RULE_LIMITS.characters &&
        text.length <= RULE_LIMITS.characters &&
        received !== "the end"
      )
        expect(text.slice(at, end).length).toBeGreaterThan(0);
      expect(message).toContain(expected);
    }),
    { numRuns: CASES, seed: 10 },
  );
  expect(read).toBeGreaterThan(CASES / 100);
  expect(refused).toBeGreaterThan(CASES / 10);
  if (long)
    console.log(`LONG rules | ${CASES} texts | ${read} read, ${refused} refused at a place, none thrown`);
});
