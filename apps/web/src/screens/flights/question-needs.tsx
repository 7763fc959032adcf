import { useDeferredValue, useMemo } from "react";
import { sentence, Stepper } from "../../parts/index.ts";
import { Link } from "../../router/index.ts";
import { answerable } from "./answerable.ts";
import { RISKS } from "./asked-of-panel.data.ts";
import type { Cupboard } from "./cupboard.ts";
import { type Plan, tastersOf } from "./plan.ts";

interface QuestionNeedsProps {
  readonly plan: Plan;
  readonly onChange: (plan: Plan) => void;
  readonly cupboard: Cupboard;
}

const risk = (chance: number): string => `1 in ${Math.round(1 / chance)}`;

/** What the question needs, whether that is at hand, and what it does not answer however much there is. */
export function QuestionNeeds({ plan, onChange, cupboard }: QuestionNeedsProps) {
  // Exact laws of many glasses take their moment; typing and tapping go first.
  const latest = useDeferredValue(plan);
  const seen = useMemo(() => answerable(latest, cupboard), [latest, cupboard]);
  const tasters = tastersOf(plan);
  return (
    <div className="needs">
      <div className="field">
        <span className="field-label">Evenings on which you taste it</span>
        <Stepper
          label="Evenings"
          value={plan.sittings}
          min={1}
          max={30}
          onChange={(sittings) => onChange({ ...plan, sittings })}
        />
        <p className="field-hint">Each evening is a flight of its own, with new numbers and a new order.</p>
      </div>
      <div aria-live="polite">
        {!seen.ok ? (
          <p>{seen.lacks}</p>
        ) : (
          <>
            <p>
              <strong>
                {seen.missing.length === 0
                  ? "This can be answered with what is at hand."
                  : "This cannot be answered yet with what is at hand."}
              </strong>{" "}
              {seen.answer.trials !== null && (
                <>
                  It takes {seen.answer.trials.smallest} sheets;{" "}
                  {tasters === 0 ? "one taster" : tasters === 1 ? "1 taster" : `${tasters} tasters`} on{" "}
                  {plan.sittings === 1 ? "1 evening" : `${plan.sittings} evenings`} give{" "}
                  {seen.answer.trialsAtHand}.
                </>
              )}
            </p>
            {seen.missing.length > 0 && (
              <>
                <ul className="needs-list">
                  {seen.missing.map((line) => (
                    <li key={line}>{sentence(line)}</li>
                  ))}
                </ul>
                <p>
                  You can taste it all the same: what comes out may then be luck, and the finding says so.
                </p>
              </>
            )}
            <details className="needs-more">
              <summary>What it does not answer, and what was reckoned with</summary>
              <ul className="needs-list">
                {seen.answer.cannot.map((line) => (
                  <li key={line}>{line}</li>
                ))}
              </ul>
              <p className="soft small">
                Reckoned exactly for this: {seen.finds}. Found by luck alone in at most {risk(RISKS.alpha)}{" "}
                tries; if it is so, missed in at most {risk(RISKS.beta)}. With other numbers:{" "}
                <Link to="/counts?of=could-show">what they could show</Link>.
              </p>
            </details>
          </>
        )}
      </div>
    </div>
  );
}
