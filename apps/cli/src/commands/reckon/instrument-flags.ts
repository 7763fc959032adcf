import type { Instruments } from "@partsproof/house/protocol";
import { one, readNumber, readVolume, readWord, yes } from "../../flags/index.ts";

/** The bench: as warm as what is measured. */
export const celsiusFlag = one(
  readNumber("temperature", -20, 40, "°C"),
  "<-20 to 40>",
  "the liquids' temperature: volumes are as read then; else 20 °C",
);

export const thermometerFlag = one(
  readWord("thermometer", ["laboratory", "kitchen", "room"]),
  "<laboratory|kitchen|room>",
  "right within 0.2, 1 or 2 °C; else room",
);

/** How far a result may be off. Any of them asks for it. */
export const instrumentFlags = {
  uncertainty: yes("how far the result may be off, and what most of it comes from"),
  label: one(
    readWord("label", ["us", "eu", "fruit", "printed", "exact"]),
    "<us|eu|fruit|printed|exact>",
    "by which rule labels are right; else us, within 0.3 % vol",
  ),
  cylinder: one(readWord("cylinder", ["A", "B", "jug"]), "<A|B|jug>", "measuring cylinder's class; else B"),
  syringe: one(readVolume, "<volume>", "instead: a syringe that holds so much"),
  scale: one(
    readWord("scale", ["pocket", "fine", "kitchen"]),
    "<pocket|fine|kitchen>",
    "a scale that shows 0.01, 0.1 or 1 g",
  ),
  thermometer: thermometerFlag,
} as const;

/** What was typed of the instruments, as the API takes it; nothing where none was asked for. */
export function typedInstruments(given: {
  readonly uncertainty: boolean;
  readonly label: Instruments["label"] | undefined;
  readonly cylinder: Instruments["cylinder"];
  readonly syringe: number | undefined;
  readonly scale: Instruments["scale"];
  readonly thermometer: Instruments["thermometer"] | undefined;
}): { readonly uncertainty?: Partial<Instruments> } {
  const { uncertainty, label, cylinder, syringe, scale, thermometer } = given;
  const named = {
    ...(label === undefined ? {} : { label }),
    ...(cylinder === undefined ? {} : { cylinder }),
    ...(syringe === undefined ? {} : { syringeMl: syringe }),
    ...(scale === undefined ? {} : { scale }),
    ...(thermometer === undefined ? {} : { thermometer }),
  };
  return uncertainty || Object.keys(named).length > 0 ? { uncertainty: named } : {};
}

/** Which flags the instruments of the API are. */
export const instrumentPlaces = {
  "uncertainty.label": "label",
  "uncertainty.cylinder": "cylinder",
  "uncertainty.syringeMl": "syringe",
  "uncertainty.scale": "scale",
  "uncertainty.thermometer": "thermometer",
} as const;

/** A flag that was typed, as a field of a body. */
export const field = <K extends string, V>(name: K, value: V | undefined): Partial<Record<K, V>> =>
  value === undefined ? {} : ({ [name]: value } as Record<K, V>);
