import type { Conflict, Problem } from "@partsproof/core/blending";
import { useCallback, useEffect } from "react";
import { printDistance, type Rules, ruleWords, useWhy, type Why } from "../../closest/index.ts";
import { listed } from "../../figures/index.ts";
import { Busy } from "../../parts/index.ts";
import { useHousehold } from "../../session/index.ts";
import { DropRule } from "./drop-rule.tsx";
import { partsWords } from "./parts-words.ts";

export interface ImpossibleProps {
  readonly problem: Problem;
  readonly rules: Rules;
  readonly onRules: (change: (rules: Rules) => Rules) => void;
  readonly nameOf: (id: string) => string;
}

/** Which rules cannot stand together, and the recipe that breaks fewest of them. */
export function Impossible({ problem, rules, onRules, nameOf }: ImpossibleProps) {
  const { currency } = useHousehold();
  const about = useCallback((): Why => ({ kind: "conflict", problem }), [problem]);
  const wondering = useWhy(about);
  const { ask } = wondering;
  useEffect(() => ask({ kind: "conflict" }), [ask]);
  const words = (name: string): string => ruleWords(name, rules, nameOf, currency);
  const conflict = wondering.because?.kind === "conflict" ? wondering.because.conflict : null;
  return (
    <section className="section impossible" aria-label="Why there is none">
      <h2>{conflict?.names.length === 1 ? "One rule can’t be kept" : "These rules can’t stand together"}</h2>
      {wondering.state === "working" && <Busy what="which rules stand in each other’s way" />}
      {wondering.state === "broken" && <p>Which of them could not be found out in this browser.</p>}
      {conflict !== null && (
        <>
          {conflict.names.length === 0 && <p>There is nothing left to make it from.</p>}
          <ul className="impossible-rules">
            {conflict.names.map((name) => (
              <li key={name}>
                <span>{words(name)}</span>
                <DropRule name={name} words={words(name)} rules={rules} onRules={onRules} />
              </li>
            ))}
          </ul>
          <p className="soft small">{howSure(conflict)}</p>
          {conflict.nearest !== null && (
            <p>
              The nearest that breaks least: <b>{partsWords(conflict.nearest.recipe, nameOf)}</b>,{" "}
              {printDistance(conflict.nearest.recipe.distance)} off. It breaks:{" "}
              {listed(conflict.nearest.breaks.map(words))}.
            </p>
          )}
        </>
      )}
    </section>
  );
}

function howSure({ names, proven }: Conflict): string {
  if (!proven) return "Some of it took too long to be sure; these may not be all, or not the fewest.";
  if (names.length === 1) return "Nothing there is keeps it, whatever the other rules say: proven.";
  return "Any one of them dropped, and the others of this list can be kept: proven.";
}
