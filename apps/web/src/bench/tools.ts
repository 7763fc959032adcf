import {
  CYLINDER_CHOICES,
  type CylinderClass,
  LABEL_CHOICES,
  type LabelClass,
  SCALE_CHOICES,
  type ScaleClass,
  THERMOMETER_CHOICES,
  type ThermometerClass,
} from "@partsproof/core/uncertainty";

/** What volumes are measured with: a cylinder's class, or a syringe by what it holds. */
type Measure = CylinderClass | "syringe 10" | "syringe 20" | "syringe 60";

/** What somebody measures with at the table. */
export interface Tools {
  readonly label: LabelClass;
  readonly measure: Measure;
  readonly scale: ScaleClass;
  readonly thermometer: ThermometerClass;
}

export const FIRST_TOOLS: Tools = { label: "us", measure: "B", scale: "fine", thermometer: "room" };

const MEASURE_CHOICES: Readonly<Record<Measure, string>> = {
  ...CYLINDER_CHOICES,
  "syringe 10": "10 mL syringe",
  "syringe 20": "20 mL syringe",
  "syringe 60": "60 mL syringe",
};

/** Every tool's classes, in plain words. */
export const TOOL_CHOICES: { readonly [K in keyof Tools]: Readonly<Record<Tools[K], string>> } = {
  label: LABEL_CHOICES,
  measure: MEASURE_CHOICES,
  scale: SCALE_CHOICES,
  thermometer: THERMOMETER_CHOICES,
};

/** Reads back what this device kept; what is not known any more is as at first. */
export function asTools(text: string | null): Tools {
  let read: Partial<Record<keyof Tools, unknown>> = {};
  try {
    read = (JSON.parse(text ?? "{}") ?? {}) as typeof read;
  } catch {
    // As at first.
  }
  const pick = <K extends keyof Tools>(tool: K): Tools[K] => {
    const value = read[tool];
    const known = typeof value === "string" && Object.hasOwn(TOOL_CHOICES[tool], value);
    return known ? (value as Tools[K]) : FIRST_TOOLS[tool];
  };
  return {
    label: pick("label"),
    measure: pick("measure"),
    scale: pick("scale"),
    thermometer: pick("thermometer"),
  };
}
