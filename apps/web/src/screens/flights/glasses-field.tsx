import { printAbv, printMl } from "../../figures/index.ts";
import { announce, Stepper, useIssuesAt } from "../../parts/index.ts";
import { PickFromShelf } from "./pick-from-shelf.tsx";
import {
  glassesOf,
  lastIndexOf,
  mostGlasses,
  mostOfVessel,
  type Plan,
  tastersOf,
  withGlasses,
} from "./plan.ts";
import type { Cupboard, Pourable } from "./cupboard.ts";

export interface PlanFieldProps {
  readonly plan: Plan;
  readonly onChange: (plan: Plan) => void;
  readonly cupboard: Cupboard;
}

const facts = ({ abv20, freeMl, name, label }: Pourable): string =>
  [label === name ? null : label, abv20 === null ? null : printAbv(abv20), `${printMl(freeMl)} free`]
    .filter((one) => one !== null)
    .join(" · ");

/** What goes in the glasses, and how often. */
export function GlassesField({ plan, onChange, cupboard }: PlanFieldProps) {
  const count = glassesOf(plan);
  const most = mostGlasses(plan);
  const byId = new Map(cupboard.pourables.map((one) => [one.vesselId, one]));
  const chosen = new Set(plan.pours.map(({ vesselId }) => vesselId));
  const issues = useIssuesAt(["glasses"]);
  const tasters = Math.max(1, tastersOf(plan));
  return (
    <div className="plan-glasses">
      {plan.pours.length > 0 && (
        <ul className="plan-chosen">
          {plan.pours.map(({ vesselId, glasses }) => {
            const pourable = byId.get(vesselId);
            if (pourable === undefined) return null;
            const ofIt = mostOfVessel(plan, glasses);
            const needMl = ofIt * tasters * plan.pourMl;
            return (
              <li key={vesselId} className="plan-pour">
                <p className="name">{pourable.name}</p>
                <div className="plan-pour-words">
                  <p className="plan-sub">{facts(pourable)}</p>
                  <p className={needMl > pourable.freeMl ? "plan-short" : "plan-sub"}>
                    {needMl > pourable.freeMl ? "Too little: " : "Takes "}
                    {printMl(needMl)}
                    {needMl > pourable.freeMl ? " needed" : ""}
                    {ofIt > 1 &&
                      ` · ${most.each === 1 ? "at most " : "poured "}${ofIt === 2 ? "twice" : `${ofIt} times`}`}
                  </p>
                </div>
                <Stepper
                  label={`Glasses of ${pourable.name}`}
                  value={glasses}
                  min={0}
                  max={Math.min(most.each, glasses + most.all - count)}
                  path={["glasses", lastIndexOf(plan, vesselId)]}
                  onChange={(next) => {
                    onChange(withGlasses(plan, vesselId, next));
                    if (next === 0) announce(`${pourable.name} taken off`);
                  }}
                />
              </li>
            );
          })}
        </ul>
      )}
      {plan.pours.length === 0 &&
        issues.map((issue) => (
          <p className="field-issue" key={issue.message}>
            {issue.message}
          </p>
        ))}
      <PickFromShelf
        verb="Pour a glass of"
        path="glasses"
        full={
          count < most.all
            ? null
            : most.all === 2
              ? "These two are told apart. Take one off to choose another."
              : `At most ${most.all} glasses are chosen for this question.`
        }
        choices={cupboard.pourables
          .filter(({ vesselId }) => !chosen.has(vesselId))
          .map((one) => ({ key: one.vesselId, label: one.name, sub: facts(one) }))}
        onPick={(vesselId) => {
          onChange(withGlasses(plan, vesselId, 1));
          announce(`A glass of ${byId.get(vesselId)?.name} added`);
        }}
      />
      {plan.pours.length > 0 && most.each > 1 && (
        <p className="field-hint">
          Pouring one of them twice costs a glass and tells whether a taster agrees with themselves.
        </p>
      )}
    </div>
  );
}
