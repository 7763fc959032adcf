import { memo } from "react";
import { type Aim, attributeName, MOST_WEIGHT, weightOf, withWeight } from "../../closest/index.ts";
import { Strip } from "../../parts/index.ts";

export interface WeightsFieldProps {
  readonly profile: Aim["profile"];
  readonly weights: Aim["weights"];
  readonly onMove: (change: (aim: Aim) => Aim) => void;
  readonly attributes: readonly string[];
}

/** How much each thing that counts counts beside the others. */
export const WeightsField = memo(function WeightsField({
  profile,
  weights,
  onMove,
  attributes,
}: WeightsFieldProps) {
  const counted = attributes.filter((attribute) => profile[attribute] !== undefined);
  if (counted.length === 0) return null;
  const none = counted.every((attribute) => weightOf({ weights }, attribute) === 0);
  return (
    <section className="closest-part">
      <details className="closest-more">
        <summary>How much each counts</summary>
        <p className="soft small">1 is as much as the others; 0 is not at all; 3 three times as much.</p>
        {none && <p className="field-issue">Weights require one above 0, got none</p>}
        <div className="strips">
          {counted.map((attribute) => (
            <WeightStrip
              key={attribute}
              attribute={attribute}
              weight={weightOf({ weights }, attribute)}
              onMove={onMove}
            />
          ))}
        </div>
      </details>
    </section>
  );
});

interface WeightStripProps {
  readonly attribute: string;
  readonly weight: number;
  readonly onMove: WeightsFieldProps["onMove"];
}

const WeightStrip = memo(function WeightStrip({ attribute, weight, onMove }: WeightStripProps) {
  return (
    <Strip
      id={attribute}
      name={attributeName(attribute)}
      said={`Weight of ${attributeName(attribute)}`}
      value={weight}
      onChange={(id, next) => onMove((aim) => withWeight(aim, id, next ?? 1))}
      max={MOST_WEIGHT}
      step={0.1}
      unset="1"
    />
  );
});
