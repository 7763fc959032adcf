import { TextField } from "../../parts/index.ts";
import { filled, typedNumber, typedNumbers } from "./typed-number.ts";

/** What stands in the glasses of a sheet and which names are on offer, as typed. */
export interface TypedGlasses {
  readonly glasses: string;
  readonly sheets: string;
  readonly pours: string;
  readonly distractors: string;
}
export const FIRST_GLASSES: TypedGlasses = { glasses: "5", sheets: "4", pours: "", distractors: "" };

/** The same as the house asks for it. */
export const glassesTyped = ({ glasses, sheets, pours, distractors }: TypedGlasses) =>
  filled({
    glasses: typedNumber(glasses),
    sheets: typedNumber(sheets),
    pours: typedNumbers(pours),
    distractors: typedNumber(distractors),
  });

interface Props {
  readonly typed: TypedGlasses;
  readonly onChange: (typed: TypedGlasses) => void;
}

export function GlassFields({ typed, onChange }: Props) {
  const field = (name: keyof TypedGlasses) => ({
    value: typed[name],
    onChange: (text: string) => onChange({ ...typed, [name]: text }),
    path: [name],
  });
  return (
    <>
      <TextField label="Glasses on each sheet" {...field("glasses")} input={{ inputMode: "numeric" }} />
      <TextField
        label="Sheets"
        {...field("sheets")}
        hint="each filled by itself"
        input={{ inputMode: "numeric" }}
      />
      <TextField
        label="How often each whiskey is poured"
        optional
        {...field("pours")}
        hint="such as 2, 1, 1, 1; all different where left out"
      />
      <TextField
        label="Names on offer that stand in no glass"
        optional
        {...field("distractors")}
        input={{ inputMode: "numeric" }}
      />
    </>
  );
}
