import { TextField } from "../../parts/index.ts";
import { RuleLine, type RuleLineProps } from "./rule-line.tsx";

type Line = Pick<RuleLineProps, "rules" | "onChange">;

/** The rules whose value is a number that is typed. */
export function TypedRules({ currency, ...line }: Line & { readonly currency: string }) {
  const { rules, onChange } = line;
  const number = (key: "low" | "high" | "years" | "price" | "batch", label: string, unit: string) => (
    <TextField
      label={label}
      path={[key]}
      value={rules[key]}
      onChange={(text) => onChange((now) => ({ ...now, [key]: text }))}
      {...(unit === "" ? {} : { unit })}
      input={{ inputMode: unit === "" ? "text" : "decimal", size: 6 }}
    />
  );
  return (
    <>
      <RuleLine rule="strength" name={`${rules.low} to ${rules.high} % vol before water`} {...line}>
        {number("low", "From", "% vol")}
        {number("high", "To", "% vol")}
      </RuleLine>
      <RuleLine rule="minAge" name={`At least ${rules.years} years old, the youngest`} {...line}>
        {number("years", "Youngest", "years")}
      </RuleLine>
      <RuleLine rule="price" name={`At most ${rules.price} ${currency} for 700 mL of it`} {...line}>
        {number("price", "Price of 700 mL", currency)}
      </RuleLine>
      <RuleLine rule="batch" name={`Enough on the shelf for ${rules.batch}`} {...line}>
        {number("batch", "Poured in all", "")}
      </RuleLine>
    </>
  );
}
