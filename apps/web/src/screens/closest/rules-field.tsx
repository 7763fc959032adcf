import { memo, useMemo } from "react";
import type { Cellar } from "../../cellar/index.ts";
import { type Rules, ruleWords, type Shelf } from "../../closest/index.ts";
import { Stepper } from "../../parts/index.ts";
import { useHousehold } from "../../session/index.ts";
import { ChosenRules } from "./chosen-rules.tsx";
import { RuleLine } from "./rule-line.tsx";
import { TypedRules } from "./typed-rules.tsx";

export interface RulesFieldProps {
  readonly rules: Rules;
  readonly onChange: (change: (rules: Rules) => Rules) => void;
  readonly cellar: Cellar;
  readonly shelf: Shelf;
  /** The whiskey sought; "" where none is. */
  readonly targetId: string;
  readonly nameOf: (id: string) => string;
}

/** What a recipe must keep, as sentences. */
export const RulesField = memo(function RulesField(props: RulesFieldProps) {
  const { rules, onChange, cellar, targetId, nameOf } = props;
  const { currency } = useHousehold();
  const [grains, held] = useMemo(
    () => [
      [...new Set(cellar.whiskeys.flatMap((one) => one.grains?.map(({ grain }) => grain) ?? []))].toSorted(),
      [...new Set(cellar.whiskeys.flatMap((one) => one.casks.map((cask) => cask.held)))]
        .filter((one) => one !== "not known")
        .toSorted(),
    ],
    [cellar.whiskeys],
  );
  const line = { rules, onChange };
  return (
    <section className="closest-part">
      <h2>Rules</h2>
      <div className="rule-bounds">
        <Stepper
          label="At most so many bottles"
          showLabel
          min={1}
          max={8}
          value={rules.maxBottles}
          onChange={(maxBottles) => onChange((now) => ({ ...now, maxBottles }))}
        />
        <Stepper
          label="At most so many parts in all"
          showLabel
          min={1}
          max={24}
          value={rules.maxParts}
          onChange={(maxParts) => onChange((now) => ({ ...now, maxParts }))}
        />
      </div>
      <ul className="rules" aria-label={`Rules that stand: ${standing(rules, nameOf, currency)}`}>
        {targetId !== "" && (
          <RuleLine rule="notTarget" name={`Not from ${nameOf(targetId)} itself`} {...line} />
        )}
        <RuleLine rule="onShelf" name="Only what is on the shelf" {...line} />
        <RuleLine rule="notGone" name="No gone releases" {...line} />
        <TypedRules {...line} currency={currency} />
        <RuleLine rule="onePlace" name="All distilled at one place" {...line} />
        <ChosenRules {...line} grains={grains} held={held} whiskeys={props.shelf.whiskeys} nameOf={nameOf} />
      </ul>
    </section>
  );
});

const standing = (rules: Rules, nameOf: (id: string) => string, currency: string): string =>
  rules.on.map((key) => ruleWords(key, rules, nameOf, currency)).join("; ") || "none";
