import { memo } from "react";
import {
  type Aim,
  attributeName,
  INTENSITY_STEP,
  NO_AIM,
  type Shelf,
  withIntensity,
} from "../../closest/index.ts";
import { listed } from "../../figures/index.ts";
import { Button, SelectField, Strip } from "../../parts/index.ts";
import { aimAt } from "./aim-at.ts";

export interface AimFieldProps {
  readonly aim: Aim;
  readonly onChange: (change: (aim: Aim) => Aim) => void;
  readonly shelf: Shelf;
  readonly nameOf: (id: string) => string;
}

/** What is sought: a whiskey as it is known, then as it is wished; or a profile drawn from nothing. */
export const AimField = memo(function AimField({ aim, onChange, shelf, nameOf }: AimFieldProps) {
  const known = shelf.tastes.get(aim.from);
  const unsaid = shelf.attributes.filter(
    (attribute) => known !== undefined && (known.values[attribute] ?? null) === null,
  );
  const moved = Object.entries(known?.values ?? {}).some(
    ([attribute, said]) => aim.profile[attribute] !== said?.value,
  );
  const gone = new Set(shelf.whiskeys.filter(({ gone: one }) => one === true).map(({ id }) => id));
  return (
    <section className="closest-part">
      <h2>You are after</h2>
      <SelectField
        label="Something like"
        value={aim.from}
        onChange={(id) => onChange(() => (id === "" ? NO_AIM : aimAt(shelf, id)))}
        options={
          <>
            <option value="">nothing named: I draw it</option>
            {[...shelf.tastes.keys()].map((id) => (
              <option key={id} value={id}>
                {nameOf(id)}
                {gone.has(id) ? " (no longer sold)" : ""}
              </option>
            ))}
          </>
        }
        hint={
          known === undefined
            ? "Or move the dots below. What you do not set does not count."
            : unsaid.length > 0
              ? `Not known of it, so not counted: ${listed(unsaid.map(attributeName))}.`
              : "Everything you have noted of it counts."
        }
      />
      <details className="closest-more" open={aim.from === "" || undefined}>
        <summary>{aim.from === "" ? "The profile" : "Like it, but less of this and more of that"}</summary>
        <div className="strips">
          {shelf.attributes.map((attribute) => (
            <AimStrip
              key={attribute}
              attribute={attribute}
              value={aim.profile[attribute] ?? null}
              onChange={onChange}
            />
          ))}
        </div>
        {moved && (
          <Button onClick={() => onChange(({ weights }) => ({ ...aimAt(shelf, aim.from), weights }))}>
            Back to how it is known
          </Button>
        )}
      </details>
    </section>
  );
});

interface AimStripProps {
  readonly attribute: string;
  readonly value: number | null;
  readonly onChange: AimFieldProps["onChange"];
}

const AimStrip = memo(function AimStrip({ attribute, value, onChange }: AimStripProps) {
  return (
    <Strip
      id={attribute}
      name={attributeName(attribute)}
      value={value}
      onChange={(id, next) => onChange((aim) => withIntensity(aim, id, next))}
      max={10}
      step={INTENSITY_STEP}
      unset="not counted"
    >
      {value !== null && (
        <Button
          kind="quiet"
          onClick={() => onChange((aim) => withIntensity(aim, attribute, null))}
          aria-label={`Do not count it: ${attributeName(attribute)}`}
        >
          Do not count it
        </Button>
      )}
    </Strip>
  );
});
