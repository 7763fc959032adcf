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
export type Measure = CylinderClass | "syringe 10" | "syringe 20" | "syringe 60";

/** What somebody measures with at the table. */
export interface Tools {
  readonly label: LabelClass;
  readonly measure: Measure;
  readonly scale: ScaleClass;
  readonly thermometer: ThermometerClass;
}

export const FIRST_TOOLS: Tools = { label: "us", measure: "B", scale: "fine", thermometer: "room" };

export const MEASURE_CHOICES: Readonly<Record<Measure, string>> = {
  ...CYLINDER_CHOICES,
  "syringe 10": "10 mL syringe",
  "syringe 20": "20 mL syringe",
  "syringe 60": "60 mL syringe",
};

/** Reads back what this device kept; what is not known any more is as at first. */
export function asTools(text: string | null): Tools {
  let read: Partial<Record<keyof Tools, unknown>> = {};
  try {
    read = (JSON.parse(text ?? "{}") ?? {}) as typeof read;
  } catch {
    // As at first.
  }
  const pick = <V extends string>(of: Readonly<Record<V, string>>, value: unknown, first: V): V =>
    typeof value === "string" && Object.hasOwn(of, value) ? (value as V) : first;
  return {
    label: pick(LABEL_CHOICES, read.label, FIRST_TOOLS.label),
    measure: pick(MEASURE_CHOICES, read.measure, FIRST_TOOLS.measure),
    scale: pick(SCALE_CHOICES, read.scale, FIRST_TOOLS.scale),
    thermometer: pick(THERMOMETER_CHOICES, read.thermometer, FIRST_TOOLS.thermometer),
  };
}
