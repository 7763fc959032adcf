import type { ComponentProps, ReactNode } from "react";
import { Field, type FieldProps } from "./field.tsx";

type Around = Omit<FieldProps, "children">;

export interface TextFieldProps extends Around {
  readonly value: string;
  readonly onChange: (value: string) => void;
  /** Set inside the box at its right end. */
  readonly unit?: string;
  readonly input?: Omit<ComponentProps<"input">, "value" | "onChange" | "id">;
}

export function TextField({ value, onChange, unit, input, ...around }: TextFieldProps) {
  return (
    <Field {...around}>
      {(control) => {
        const box = (
          <input
            type="text"
            autoComplete="off"
            className="input"
            {...input}
            {...control}
            value={value}
            onChange={(event) => onChange(event.target.value)}
          />
        );
        return unit === undefined ? (
          box
        ) : (
          <span className="input-unit">
            {box}
            <span>{unit}</span>
          </span>
        );
      }}
    </Field>
  );
}

export interface AreaFieldProps extends Around {
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly rows?: number;
}

export function AreaField({ value, onChange, rows = 3, ...around }: AreaFieldProps) {
  return (
    <Field {...around}>
      {(control) => (
        <textarea
          className="input"
          rows={rows}
          {...control}
          value={value}
          onChange={(event) => onChange(event.target.value)}
        />
      )}
    </Field>
  );
}

export interface SelectFieldProps extends Around {
  readonly value: string;
  readonly onChange: (value: string) => void;
  /** The <option>s. */
  readonly options: ReactNode;
}

export function SelectField({ value, onChange, options, ...around }: SelectFieldProps) {
  return (
    <Field {...around}>
      {(control) => (
        <select
          className="input"
          {...control}
          value={value}
          onChange={(event) => onChange(event.target.value)}
        >
          {options}
        </select>
      )}
    </Field>
  );
}
