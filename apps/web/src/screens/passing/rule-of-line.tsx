import { parseRule, printCondition, printRule } from "@partsproof/core/slots";
import type { Whiskey } from "@partsproof/house/protocol";
import { useState } from "react";
import { Button, TextField } from "../../parts/index.ts";
import { SayIt } from "./say-it.tsx";

export interface RuleOfLineProps {
  readonly slot: number;
  readonly slots: number;
  readonly whiskey: Whiskey | null;
  readonly currency: string;
  /** "" for none. */
  readonly rule: string;
  readonly onChange: (rule: string) => void;
}

/** The rule of one line: its sentences, each to be taken away; one more by tapping; or the whole of it typed. */
export function RuleOfLine({ slot, slots, whiskey, currency, rule, onChange }: RuleOfLineProps) {
  const [typing, setTyping] = useState(false);
  const read = parseRule(rule === "" ? "anything" : rule);
  const conditions = read.ok ? read.rule : [];
  const without = (n: number): void => {
    const left = conditions.filter((_, at) => at !== n);
    onChange(left.length === 0 ? "" : printRule(left));
  };
  return (
    <div className="rule-of">
      {conditions.length > 0 && (
        <ul className="sentences" aria-label={`What line ${slot} asks`}>
          {conditions.map((condition, n) => (
            <li key={printCondition(condition)}>
              <span>{printCondition(condition)}</span>
              <button
                type="button"
                aria-label={`Take away: ${printCondition(condition)}`}
                onClick={() => without(n)}
              >
                <span aria-hidden="true">×</span>
              </button>
            </li>
          ))}
        </ul>
      )}
      {rule === "" && <p className="soft">No rule yet: only the whiskey itself stands here.</p>}
      {rule === "anything" && <p>Anything may stand here.</p>}
      <SayIt
        whiskey={whiskey}
        slot={slot}
        slots={slots}
        currency={currency}
        onSay={(text) => onChange(conditions.length === 0 ? text : `${printRule(conditions)}, ${text}`)}
      />
      {typing ? (
        <TextField
          label={`The rule of line ${slot}, written out`}
          path={["slots", slot - 1, "rule"]}
          value={rule}
          onChange={onChange}
          wrong={
            rule === "" || read.ok
              ? null
              : `${read.error.expected} at character ${read.error.at + 1}, got ${JSON.stringify(rule.slice(read.error.at, read.error.at + 12))}`
          }
        />
      ) : (
        <Button kind="quiet" onClick={() => setTyping(true)}>
          Write it out instead
        </Button>
      )}
    </div>
  );
}
