import type { TrialPlan, TrialSet } from "@partsproof/house/protocol";
import { mlDigits } from "../../figures/index.ts";

export interface DrawListProps {
  readonly plan: TrialPlan;
  /** Bottle by bottle, of the shelf; the plan's own list where the set is not kept yet. */
  readonly bottles?: TrialSet["bottles"];
}

const into = (plan: TrialPlan, label: string): string => {
  const trials = plan.pourList.find(({ part }) => part === label)?.intoTrials ?? [];
  return trials.length === 1 ? `into trial ${trials[0]}` : `into trials ${trials.join(", ")}`;
};

/** What to draw of each bottle: one after the other, so that the syringe is rinsed once a bottle. */
export function DrawList({ plan, bottles }: DrawListProps) {
  const lines =
    bottles === undefined
      ? plan.pourList.map(({ part, ml }) => ({ label: part, needMl: ml, from: [], keptMl: 0, shortMl: 0 }))
      : bottles.filter(({ needMl }) => needMl > 0);
  return (
    <ol className="trial-draw">
      {lines.map(({ label, needMl, from, keptMl, shortMl }) => (
        <li key={label}>
          <span>
            <b>{Number(needMl.toFixed(1))}</b> mL
          </span>
          <p>
            <span className="name">{label}</span>
            <span className="soft small">{into(plan, label)}</span>
            {(from.length > 1 || from.some((one) => one.label !== label)) && (
              <span className="soft small">
                {from.map((one) => `${mlDigits(one.ml)} mL out of ${one.label}`).join("; ")}
              </span>
            )}
            {keptMl > 0 && (
              <span className="soft small">{`${mlDigits(keptMl)} mL more stay in a bottle for a glass of the flight`}</span>
            )}
            {shortMl > 0 && (
              <span className="field-issue">{`The shelf is ${mlDigits(shortMl)} mL short of it.`}</span>
            )}
          </p>
        </li>
      ))}
    </ol>
  );
}
