import { memo } from "react";
import type { Rules, Shelf } from "../../closest/index.ts";
import { TextField, Tick } from "../../parts/index.ts";

export interface BesidesFieldProps {
  readonly rules: Rules;
  readonly onChange: (change: (rules: Rules) => Rules) => void;
  readonly currency: string;
  readonly laws: Shelf["laws"];
}

/** What counts besides closeness, each said as what it is worth. Empty counts for nothing. */
export const BesidesField = memo(function BesidesField({
  rules,
  onChange,
  currency,
  laws,
}: BesidesFieldProps) {
  const { besides } = rules;
  const set = (change: Partial<Rules["besides"]>): void =>
    onChange((now) => ({ ...now, besides: { ...now.besides, ...change } }));
  return (
    <section className="closest-part">
      <details className="closest-more">
        <summary>What counts besides closeness</summary>
        <div className="form-row">
          <TextField
            label="0.1 further off is made up for by a saving of"
            optional
            path={["cheaperBy"]}
            unit={currency}
            value={besides.cheaperBy}
            onChange={(cheaperBy) => set({ cheaperBy })}
            hint="On 700 mL. Whiskeys without a price are then left out."
            input={{ inputMode: "decimal" }}
          />
          <TextField
            label="or by being older by"
            optional
            path={["olderBy"]}
            unit="years"
            value={besides.olderBy}
            onChange={(olderBy) => set({ olderBy })}
            hint="The mean age by parts; one without an age counts as 0 years."
            input={{ inputMode: "decimal" }}
          />
          <TextField
            label="Use up bottles with less than"
            optional
            path={["lowBelow"]}
            value={besides.lowBelow}
            onChange={(lowBelow) => set({ lowBelow })}
            hint="150 mL, say. Pouring only from such is worth 0.3 of closeness."
          />
        </div>
        <Tick
          label="Count what nobody has said of a whiskey against it"
          value={rules.wary}
          onChange={(wary) => onChange((now) => ({ ...now, wary }))}
        />
        {laws.length > 0 && (
          <Tick
            label="Take every attribute as the mean of the parts, whatever blends have shown"
            value={rules.byMean}
            onChange={(byMean) => onChange((now) => ({ ...now, byMean }))}
          />
        )}
      </details>
    </section>
  );
});
