import type { CountsEffect } from "@partsproof/house/protocol";
import { Choice, SelectField, TextField } from "../../parts/index.ts";
import type { Path } from "../../parts/issues-at.ts";
import { typedNumber } from "./typed-number.ts";

/** The difference tests, as people call them. */
const TESTS = {
  triangle: "triangle",
  duo_trio: "duo-trio",
  two_afc: "2-AFC, the paired comparison",
  three_afc: "3-AFC",
  tetrad: "tetrad",
  two_out_of_five: "two out of five",
} as const;
export type TestName = keyof typeof TESTS;

interface TestProps {
  readonly value: TestName;
  readonly onChange: (test: TestName) => void;
}

export function TestField({ value, onChange }: TestProps) {
  return (
    <SelectField
      label="Test"
      value={value}
      onChange={(test) => onChange(test as TestName)}
      path={["test"]}
      options={Object.entries(TESTS).map(([test, name]) => (
        <option key={test} value={test}>
          {name}
        </option>
      ))}
    />
  );
}

export interface TypedEffect {
  readonly as: "share" | "dPrime";
  readonly value: string;
}

/** What was typed, as the house asks for it; undefined where nothing was. */
export function effectTyped({ as, value }: TypedEffect): CountsEffect | undefined {
  const number = typedNumber(value);
  return number === undefined ? undefined : as === "share" ? { share: number } : { dPrime: number };
}

interface EffectProps {
  readonly label: string;
  readonly effect: TypedEffect;
  readonly onChange: (effect: TypedEffect) => void;
  readonly path: Path;
  readonly optional?: boolean;
}

/** How large a difference, as a share or as a distance. */
export function EffectFields({ label, effect, onChange, path, optional = false }: EffectProps) {
  return (
    <>
      <TextField
        label={label}
        optional={optional}
        value={effect.value}
        onChange={(value) => onChange({ ...effect, value })}
        path={path}
        hint={
          effect.as === "share"
            ? "0.5 is: half can tell while the rest guess"
            : "in standard deviations of one taste: 1 is a small one, 2 a plain one"
        }
        input={{ inputMode: "decimal" }}
      />
      <Choice
        label={`${label}, as`}
        quietLabel
        value={effect.as}
        onChange={(as) => onChange({ ...effect, as })}
        options={[
          { value: "share", label: "a share" },
          { value: "dPrime", label: "a d′" },
        ]}
      />
    </>
  );
}
