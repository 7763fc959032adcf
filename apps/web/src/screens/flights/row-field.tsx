import { SelectField, Stepper, Tick } from "../../parts/index.ts";
import type { PlanFieldProps } from "./glasses-field.tsx";
import { glassesOf } from "./plan.ts";

const MOST_REPEATS = 3;

/** What else a row of glasses can hold: repeats that the house draws, a control, only some of them each, the strong ones late. */
export function RowField({ plan, onChange, cupboard }: PlanFieldProps) {
  const glasses = glassesOf(plan);
  const some = plan.question !== "how_close" && plan.glassesEach !== null && plan.glassesEach < glasses;
  const chosen = new Set(plan.pours.map(({ vesselId }) => vesselId));
  return (
    <details className="plan-more">
      <summary>Repeats, a control, more glasses than a palate takes</summary>
      <div className="sets-field">
        {plan.question !== "how_close" && glasses > 2 && (
          <SelectField
            label="Each taster gets"
            path={["glassesEach"]}
            value={some ? String(plan.glassesEach) : ""}
            onChange={(each) => onChange({ ...plan, glassesEach: each === "" ? null : Number(each) })}
            hint="With only some of them each, every glass is tasted about equally often, and no test of the ranks is made."
            options={
              <>
                <option value="">all {glasses} glasses</option>
                {Array.from({ length: glasses - 2 }, (_, i) => glasses - 1 - i).map((each) => (
                  <option key={each} value={each}>
                    {each} of the {glasses}
                  </option>
                ))}
              </>
            }
          />
        )}
        {!some && (
          <>
            <div className="field">
              <span className="field-label">Poured a second time, drawn by the house</span>
              <Stepper
                label="Glasses poured a second time"
                value={Math.min(plan.repeats, glasses)}
                min={0}
                max={Math.min(MOST_REPEATS, glasses)}
                path={["repeats"]}
                onChange={(repeats) => onChange({ ...plan, repeats })}
              />
              <p className="field-hint">
                Tells whether a taster agrees with themselves, and nobody knows beforehand of which. So every
                name may be in one glass more.
              </p>
            </div>
            <SelectField
              label="A control"
              path={["controlVesselId"]}
              value={plan.controlVesselId ?? ""}
              onChange={(id) => onChange({ ...plan, controlVesselId: id === "" ? null : id })}
              hint="One glass more, of a whiskey that everybody knows: who cannot place it may not be at their best."
              options={
                <>
                  <option value="">None</option>
                  {cupboard.pourables
                    .filter(({ vesselId }) => !chosen.has(vesselId))
                    .map(({ vesselId, name, label }) => (
                      <option key={vesselId} value={vesselId}>
                        {name === label ? name : `${name}, ${label}`}
                      </option>
                    ))}
                </>
              }
            />
          </>
        )}
        {plan.question !== "which_is_which" && (
          <Tick
            label="The strong and smoky ones late, where that costs no balance"
            path={["late"]}
            value={plan.late}
            onChange={(late) => onChange({ ...plan, late })}
          />
        )}
      </div>
    </details>
  );
}
