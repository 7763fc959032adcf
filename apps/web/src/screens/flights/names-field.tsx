import { announce, SelectField, Tick, useIssuesAt } from "../../parts/index.ts";
import { CrossGlyph } from "../../parts/glyphs.tsx";
import type { PlanFieldProps } from "./glasses-field.tsx";
import { PickFromShelf } from "./pick-from-shelf.tsx";
import { MOST_DISTRACTORS, namesOffered, tastersOf } from "./plan.ts";
import { printMl } from "../../figures/index.ts";

/** Names that a taster may guess and that stand in no glass; and which of all names is the target. */
export function NamesField({ plan, onChange, cupboard }: PlanFieldProps) {
  const offered = new Set(namesOffered(plan, cupboard.pourables));
  const needMl = plan.pourMl * Math.max(1, tastersOf(plan));
  const others = [...cupboard.names.values()].filter(
    ({ nameId, freeMl }) => !offered.has(nameId) && freeMl >= needMl,
  );
  const labelOf = (nameId: string): string => cupboard.names.get(nameId)?.label ?? nameId;
  const issues = useIssuesAt(["distractors"]);
  return (
    <div className="plan-names">
      <SelectField
        label="The target"
        path={["targetNameId"]}
        hint={
          plan.question === "how_close"
            ? "The one that the others are to come close to. Pour a glass of it: it stands hidden among them."
            : "The one that the blends try to come close to, if it is here."
        }
        value={plan.targetNameId !== null && offered.has(plan.targetNameId) ? plan.targetNameId : ""}
        onChange={(nameId) => onChange({ ...plan, targetNameId: nameId === "" ? null : nameId })}
        options={
          <>
            <option value="">No target in this flight</option>
            {[...offered].map((nameId) => (
              <option key={nameId} value={nameId}>
                {labelOf(nameId)}
              </option>
            ))}
          </>
        }
      />
      {plan.question === "which_is_which" && (
        <fieldset className="field">
          <legend className="field-label">
            Names that are in no glass<span className="field-optional"> (if you like)</span>
          </legend>
          <p className="field-hint">
            They are offered beside the true ones, so that nobody names the last glass by what is left over.
            Only what could really have been poured is listed.
          </p>
          {plan.distractors.length > 0 && (
            <ul className="plan-tags">
              {plan.distractors.map((nameId) => (
                <li key={nameId}>
                  <span>
                    {labelOf(nameId)}
                    {(cupboard.names.get(nameId)?.freeMl ?? 0) < needMl && (
                      <span className="plan-short"> too little: {printMl(needMl)} needed</span>
                    )}
                  </span>
                  <button
                    type="button"
                    aria-label={`Take ${labelOf(nameId)} off the names`}
                    onClick={() => {
                      onChange({
                        ...plan,
                        distractors: plan.distractors.filter((other) => other !== nameId),
                      });
                      announce(`${labelOf(nameId)} taken off the names`);
                    }}
                  >
                    <CrossGlyph />
                  </button>
                </li>
              ))}
            </ul>
          )}
          {issues.map((issue) => (
            <p className="field-issue" key={issue.path.join("/")}>
              {issue.message}
            </p>
          ))}
          <details className="plan-more">
            <summary>Add a name</summary>
            <PickFromShelf
              verb="Offer the name"
              path="distractors"
              full={
                plan.distractors.length >= MOST_DISTRACTORS
                  ? `At most ${MOST_DISTRACTORS} names may be added.`
                  : null
              }
              choices={others.map(({ nameId, label, freeMl }) => ({
                key: nameId,
                label,
                sub: `${printMl(freeMl)} free`,
              }))}
              onPick={(nameId) => {
                onChange({ ...plan, distractors: [...plan.distractors, nameId] });
                announce(`${labelOf(nameId)} added to the names`);
              }}
            />
          </details>
        </fieldset>
      )}
      {plan.question === "how_close" && (
        <Tick
          label="Pour each taster a glass of the target labelled R as well, to compare with"
          path={["reference"]}
          value={plan.reference}
          onChange={(reference) => onChange({ ...plan, reference })}
        />
      )}
    </div>
  );
}
