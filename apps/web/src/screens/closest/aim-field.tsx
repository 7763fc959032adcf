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
  readonly from: string;
  readonly profile: Aim["profile"];
  readonly onChange: (change: (aim: Aim) => Aim) => void;
  /** For what moves under a finger. */
  readonly onMove: (change: (aim: Aim) => Aim) => void;
  readonly shelf: Shelf;
  readonly nameOf: (id: string) => string;
}

/** What is sought: a whiskey as it is known, then as it is wished; or a profile drawn from nothing. */
export const AimField = memo(function AimField({
  from,
  profile,
  onChange,
  onMove,
  shelf,
  nameOf,
}: AimFieldProps) {
  const known = shelf.tastes.get(from);
  const unsaid = shelf.attributes.filter(
    (attribute) => known !== undefined && (known.values[attribute] ?? null) === null,
  );
  const moved = Object.entries(known?.values ?? {}).some(
    ([attribute, said]) => profile[attribute] !== said?.value,
  );
  const gone = new Set(shelf.whiskeys.filter(({ gone: one }) => one === true).map(({ id }) => id));
  return (
    <section className="closest-part">
      <h2>You are after</h2>
      <SelectField
        label="Something like"
        value={from}
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
      <details className="closest-more" open={from === "" || undefined}>
        <summary>{from === "" ? "The profile" : "Like it, but less of this and more of that"}</summary>
        <div className="strips">
          {shelf.attributes.map((attribute) => (
            <AimStrip
              key={attribute}
              attribute={attribute}
              value={profile[attribute] ?? null}
              onMove={onMove}
            />
          ))}
        </div>
        {moved && (
          <Button onClick={() => onChange(({ weights }) => ({ ...aimAt(shelf, from), weights }))}>
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
  readonly onMove: AimFieldProps["onMove"];
}

const AimStrip = memo(function AimStrip({ attribute, value, onMove }: AimStripProps) {
  return (
    <Strip
      id={attribute}
      name={attributeName(attribute)}
      value={value}
      onChange={(id, next) => onMove((aim) => withIntensity(aim, id, next))}
      max={10}
      step={INTENSITY_STEP}
      unset="not counted"
    >
      {value !== null && (
        <Button
          kind="quiet"
          onClick={() => onMove((aim) => withIntensity(aim, attribute, null))}
          aria-label={`Do not count it: ${attributeName(attribute)}`}
        >
          Do not count it
        </Button>
      )}
    </Strip>
  );
});
