import { reserve, SMALLEST_POUR_ML } from "@partsproof/core/sensory";
import { useState } from "react";
import { printMl } from "../../figures/index.ts";
import { Stepper } from "../../parts/index.ts";
import type { Cupboard } from "./cupboard.ts";
import { namesOffered, type Plan, tastersOf } from "./plan.ts";

const flights = (count: number): string => (count === 1 ? "1 flight" : `${count} flights`);
/** A stepper's step for what is kept back. */
const STEP_ML = 10;

/** How long a target that cannot be bought again lasts. */
export function TargetReserve({ plan, cupboard }: { readonly plan: Plan; readonly cupboard: Cupboard }) {
  const [keep, setKeep] = useState(0);
  const target = plan.targetNameId === null ? undefined : cupboard.names.get(plan.targetNameId);
  const poured = namesOffered({ ...plan, distractors: [] }, cupboard.pourables);
  const times = poured.filter((nameId) => nameId === plan.targetNameId).length;
  if (target === undefined || times === 0) return null;
  const glasses = times * Math.max(1, tastersOf(plan));
  const keepMl = keep * STEP_ML;
  const left = reserve({ leftMl: target.freeMl, keepMl, glasses }, plan.pourMl);
  return (
    <div className="reserve">
      <p aria-live="polite">
        <strong>{target.label}</strong>: {printMl(target.freeMl)} left to pour. Like this it is enough for{" "}
        <strong>{flights(left.flights)}</strong>, with {SMALLEST_POUR_ML} mL in each glass, the smallest pour,
        for {flights(left.flightsAtSmallest)}.
      </p>
      <div className="field">
        <span className="field-label">Never to be poured: {keepMl} mL</span>
        <Stepper
          label="Tens of millilitres never to be poured"
          value={keep}
          min={0}
          max={Math.floor(target.freeMl / STEP_ML)}
          onChange={setKeep}
        />
      </div>
    </div>
  );
}
