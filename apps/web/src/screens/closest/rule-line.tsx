import { type ReactNode, useId } from "react";
import { type RuleKey, type Rules, stands, toggled } from "../../closest/index.ts";

export interface RuleLineProps {
  readonly rule: RuleKey;
  /** The rule in a few words, what its tick is called. */
  readonly name: string;
  readonly rules: Rules;
  readonly onChange: (change: (rules: Rules) => Rules) => void;
  /** The value, where the rule has one. */
  readonly children?: ReactNode;
}

/** One rule as a sentence that stands or does not; its value can be changed while it stands. */
export function RuleLine({ rule, name, rules, onChange, children }: RuleLineProps) {
  const id = useId();
  const on = stands(rules, rule);
  return (
    <li className={on ? "rule rule-on" : "rule"}>
      <label className="tick" htmlFor={id}>
        <input id={id} type="checkbox" checked={on} onChange={() => onChange((now) => toggled(now, rule))} />
        <span>{name}</span>
      </label>
      {on && children !== undefined && <div className="rule-value">{children}</div>}
    </li>
  );
}
