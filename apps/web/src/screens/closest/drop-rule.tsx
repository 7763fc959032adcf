import { type RuleKey, type Rules, stands, toggled } from "../../closest/index.ts";
import { Button } from "../../parts/index.ts";

export interface DropRuleProps {
  /** The rule's name, as core says it. */
  readonly name: string;
  readonly words: string;
  readonly rules: Rules;
  readonly onRules: (change: (rules: Rules) => Rules) => void;
}

/** Nothing for what is no rule of the list, or for one that does not stand. */
export function DropRule({ name, words, rules, onRules }: DropRuleProps) {
  const key = name as RuleKey;
  if (!stands(rules, key)) return null;
  return (
    <Button aria-label={`Drop this rule: ${words}`} onClick={() => onRules((now) => toggled(now, key))}>
      Drop this rule
    </Button>
  );
}
