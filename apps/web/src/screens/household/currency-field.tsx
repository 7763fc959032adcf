import { SelectField } from "../../parts/index.ts";

/** Codes of ISO 4217, as far as this browser knows them. */
const codes = Intl.supportedValuesOf("currency");
const names = new Intl.DisplayNames("en-GB", { type: "currency" });
const FIRST = ["USD", "EUR", "GBP", "JPY", "CAD", "AUD", "CHF", "INR"];

export interface CurrencyFieldProps {
  readonly value: string;
  readonly onChange: (value: string) => void;
}

export function CurrencyField({ value, onChange }: CurrencyFieldProps) {
  const option = (code: string) => (
    <option key={code} value={code}>
      {code}, {names.of(code) ?? code}
    </option>
  );
  return (
    <SelectField
      label="Prices are in"
      path={["currency"]}
      value={value}
      onChange={onChange}
      options={
        <>
          <optgroup label="Often used">{FIRST.map(option)}</optgroup>
          <optgroup label="All">{codes.filter((code) => !FIRST.includes(code)).map(option)}</optgroup>
        </>
      }
    />
  );
}
