import type { CylinderClass } from "./cylinder.ts";
import type { ScaleClass } from "./kitchen-scale.ts";
import type { LabelClass } from "./label.ts";
import type { ThermometerClass } from "./thermometer.ts";

/** What to call the rules a label can be right by, most usual first. */
export const LABEL_CHOICES: Readonly<Record<LabelClass, string>> = {
  us: "label by US law, right within 0.3 % vol",
  eu: "label by EU law, right within 0.3 % vol",
  fruit: "label by EU law, with fruit or plants in it, right within 1.5 % vol",
  printed: "gauged by the maker for this bottling, rounded to 0.1 % vol",
  exact: "taken as it stands",
};

/** What to call the classes of measuring cylinders. Syringes have one class, by what they hold. */
export const CYLINDER_CHOICES: Readonly<Record<CylinderClass, string>> = {
  A: "measuring cylinder marked A",
  B: "measuring cylinder marked B, or with no mark",
  jug: "kitchen jug",
};

/** What to call the classes of scales. */
export const SCALE_CHOICES: Readonly<Record<ScaleClass, string>> = {
  pocket: "pocket scale that shows 0.01 g",
  fine: "kitchen scale that shows 0.1 g",
  kitchen: "kitchen scale that shows 1 g",
};

/** What to call the classes of thermometers. */
export const THERMOMETER_CHOICES: Readonly<Record<ThermometerClass, string>> = {
  laboratory: "laboratory thermometer, right within 0.2 °C",
  kitchen: "kitchen thermometer, right within 1 °C",
  room: "no thermometer: as warm as the room, within 2 °C",
};
