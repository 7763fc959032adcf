import type { ShelfWhiskey } from "@partsproof/core/blending";
import type { WoodSpecies } from "@partsproof/house/protocol";
import { listed } from "../../figures/index.ts";
import { SelectField, Stepper, TextField } from "../../parts/index.ts";
import { PickWhiskeys } from "./pick-whiskeys.tsx";
import { RuleLine, type RuleLineProps } from "./rule-line.tsx";

const WOODS: readonly WoodSpecies[] = [
  "American oak",
  "European oak",
  "Japanese oak",
  "other oak",
  "other wood",
];

export interface ChosenRulesProps extends Pick<RuleLineProps, "rules" | "onChange"> {
  readonly grains: readonly string[];
  readonly held: readonly string[];
  readonly whiskeys: readonly ShelfWhiskey[];
  readonly nameOf: (id: string) => string;
}

/** The rules whose value is chosen from what the household has. */
export function ChosenRules({ grains, held, whiskeys, nameOf, ...line }: ChosenRulesProps) {
  const { rules, onChange } = line;
  const choose = (key: "held" | "grain" | "mostOf" | "wood", label: string, options: readonly string[]) => (
    <SelectField
      label={label}
      path={[key]}
      value={rules[key]}
      onChange={(value) => onChange((now) => ({ ...now, [key]: value }))}
      options={
        <>
          {key !== "wood" && <option value="">choose …</option>}
          {options.map((option) => (
            <option key={option} value={option}>
              {key === "mostOf"
                ? nameOf(option)
                : key === "held" && option === "nothing"
                  ? "nothing (virgin)"
                  : option}
            </option>
          ))}
        </>
      }
    />
  );
  const pick = (key: "mustUse" | "keep", label: string) => (
    <PickWhiskeys
      label={label}
      path={[key]}
      picked={rules[key]}
      onChange={(ids) => onChange((now) => ({ ...now, [key]: ids }))}
      whiskeys={whiskeys}
      nameOf={nameOf}
    />
  );
  return (
    <>
      <RuleLine rule="wood" name={`Only ${rules.wood}`} {...line}>
        {choose("wood", "Wood of every cask", WOODS)}
      </RuleLine>
      <RuleLine rule="withoutHeld" name={`No cask that held ${rules.held || "…"}`} {...line}>
        {choose("held", "The cask held", held)}
      </RuleLine>
      <RuleLine
        rule="grain"
        name={`At least ${rules.grainPercent} % of the alcohol from ${rules.grain || "…"}`}
        {...line}
      >
        <TextField
          label="At least"
          path={["grainPercent"]}
          unit="%"
          value={rules.grainPercent}
          onChange={(grainPercent) => onChange((now) => ({ ...now, grainPercent }))}
          input={{ inputMode: "decimal", size: 6 }}
        />
        {choose("grain", "Grain", grains)}
      </RuleLine>
      <RuleLine rule="mustUse" name={`Must use ${listed(rules.mustUse.map(nameOf)) || "…"}`} {...line}>
        {pick("mustUse", "Must use")}
      </RuleLine>
      <RuleLine rule="keep" name={`Keep ${listed(rules.keep.map(nameOf)) || "…"} for another day`} {...line}>
        {pick("keep", "Keep for another day")}
      </RuleLine>
      <RuleLine
        rule="mostOfOne"
        name={
          rules.mostOf === ""
            ? "Not too much of one"
            : `At most ${rules.mostParts} of ${nameOf(rules.mostOf)}`
        }
        {...line}
      >
        <Stepper
          label="At most so many parts of it"
          showLabel
          min={0}
          max={24}
          value={rules.mostParts}
          onChange={(mostParts) => onChange((now) => ({ ...now, mostParts }))}
        />
        {choose(
          "mostOf",
          "Whiskey",
          whiskeys.map(({ id }) => id),
        )}
      </RuleLine>
    </>
  );
}
