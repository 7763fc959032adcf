import { DISCRIMINATION, type DiscriminationMethod, plainOdds } from "@partsproof/core/sensory";
import { SelectField, Stepper, TextField } from "../../parts/index.ts";
import type { PlanFieldProps } from "./glasses-field.tsx";
import { mostSets, withinSets } from "./plan.ts";

const METHODS = Object.keys(DISCRIMINATION) as DiscriminationMethod[];

/** When to choose which; common practice, no source. */
const WHEN: Readonly<Record<DiscriminationMethod, string>> = {
  triangle: "Three glasses a set. Needs no word for the difference.",
  duo_trio: "Three glasses a set, the first known. Easier where one of the two is familiar.",
  paired: "Two glasses a set: least to drink, but you must be able to name what differs.",
  tetrad: "Four glasses a set: finds smaller differences, and is the most to drink.",
};

const luckOf = ({ chance }: (typeof DISCRIMINATION)[DiscriminationMethod]): string =>
  plainOdds(Number(chance.numerator) / Number(chance.denominator));

/** How two are told apart, how often, and what a pair is asked for. */
export function SetsField({ plan, onChange, cupboard }: PlanFieldProps) {
  const nameOf = (vesselId: string): string =>
    cupboard.pourables.find((one) => one.vesselId === vesselId)?.name ?? vesselId;
  return (
    <div className="sets-field">
      <fieldset className="question">
        <legend className="field-label">How they are told apart</legend>
        {METHODS.map((method) => {
          const how = DISCRIMINATION[method];
          return (
            <label key={method} className="question-one">
              <input
                type="radio"
                name="method"
                data-path="method"
                checked={plan.method === method}
                aria-labelledby={`method-${method}-title`}
                aria-describedby={`method-${method}`}
                onChange={() => onChange(withinSets({ ...plan, method }))}
              />
              <span className="question-title" id={`method-${method}-title`}>
                {how.title}
              </span>
              <span className="question-says" id={`method-${method}`}>
                {how.task} {WHEN[method]} By luck alone, {luckOf(how)} is right. {how.standard}.
              </span>
            </label>
          );
        })}
      </fieldset>
      {plan.method === "paired" && (
        <>
          <TextField
            label="Which of the two is …"
            path={["asked"]}
            value={plan.asked}
            onChange={(asked) => onChange({ ...plan, asked })}
            hint="A word that can be more or less: sweeter, smokier, longer."
            input={{ maxLength: 60 }}
          />
          {plan.pouring === "alone" ? null : (
            <SelectField
              label="Which has more of it, do you say beforehand"
              path={["expectedVesselId"]}
              value={plan.expectedVesselId ?? ""}
              onChange={(id) => onChange({ ...plan, expectedVesselId: id === "" ? null : id })}
              hint="Sealed with the key, so that it cannot be chosen afterwards. Without it either may have more, and it takes more sets to be sure."
              options={
                <>
                  <option value="">Either may</option>
                  {plan.pours.map(({ vesselId }) => (
                    <option key={vesselId} value={vesselId}>
                      {nameOf(vesselId)}
                    </option>
                  ))}
                </>
              }
            />
          )}
        </>
      )}
      <div className="field">
        <span className="field-label">Sets for each taster</span>
        <Stepper
          label="Sets for each taster"
          value={plan.sets}
          min={1}
          max={mostSets(plan)}
          path={["sets"]}
          onChange={(sets) => onChange({ ...plan, sets })}
        />
        <p className="field-hint">
          {plan.pouring === "alone"
            ? `Alone at most ${String(mostSets(plan))}, as many as there are letters for. `
            : "Every set has its own numbers and order. "}
          More sets tell more, and are more to drink: see how much alcohol that is, and pour less.
        </p>
      </div>
    </div>
  );
}
