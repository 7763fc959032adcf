import type { PriceOfRule } from "@partsproof/core/blending";
import { printDistance, type Rules, ruleWords } from "../../closest/index.ts";
import { useHousehold } from "../../session/index.ts";
import { DropRule } from "./drop-rule.tsx";
import { partsWords } from "./parts-words.ts";

export interface PricesProps {
  readonly prices: readonly PriceOfRule[];
  readonly rules: Rules;
  readonly onRules: (change: (rules: Rules) => Rules) => void;
  readonly nameOf: (id: string) => string;
}

/** What each rule costs in closeness, the dearest first. */
export function Prices({ prices, rules, onRules, nameOf }: PricesProps) {
  const { currency } = useHousehold();
  const words = (name: string): string => ruleWords(name, rules, nameOf, currency);
  const dearest = prices.toSorted((a, b) => (b.costs ?? 0) - (a.costs ?? 0));
  const [first] = dearest;
  const found =
    first === undefined || (first.costs ?? 0) < 0.005
      ? "No rule costs you anything"
      : `“${words(first.name)}” costs you ${printDistance(first.costs ?? 0)}`;
  return (
    <div className="wonder-answer" role="status">
      <h3>{found}</h3>
      <ul className="impossible-rules">
        {dearest.map(({ name, costs, without }) => (
          <li key={name}>
            <span>
              {words(name)}: <b>{costs === null ? "not to be said" : printDistance(costs)}</b>
              {costs !== null && costs >= 0.005 && without !== null && (
                <span className="soft small"> without it, {partsWords(without, nameOf)}</span>
              )}
            </span>
            {(costs ?? 0) >= 0.005 && (
              <DropRule name={name} words={words(name)} rules={rules} onRules={onRules} />
            )}
          </li>
        ))}
      </ul>
    </div>
  );
}
