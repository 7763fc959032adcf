import type { AttributeId } from "@partsproof/core/sensory";
import type { Section } from "./sheet-fields.ts";

/** The intensities that are in sight at once; all others are one choice away. Common practice, no source. */
export const QUICK: Readonly<Record<Section, readonly AttributeId[]>> = {
  nose: [
    "fruit.orchard",
    "fruit.dried",
    "sweet.vanilla",
    "spice.warm",
    "wood.toasted",
    "smoke.smoke",
    "spirit.ethanol",
  ],
  palate: [
    "fruit.dried",
    "sweet.vanilla",
    "spice.warm",
    "wood.toasted",
    "smoke.smoke",
    "feel.weight",
    "feel.burn",
    "feel.pull",
  ],
  finish: ["time.finish", "spice.warm", "wood.toasted", "smoke.smoke", "feel.burn", "feel.pull"],
  whole: [
    "fruit.orchard",
    "fruit.dried",
    "sweet.vanilla",
    "spice.warm",
    "wood.toasted",
    "smoke.smoke",
    "feel.weight",
    "feel.burn",
    "time.finish",
  ],
};
