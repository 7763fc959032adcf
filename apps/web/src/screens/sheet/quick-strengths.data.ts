import type { AttributeId } from "@partsproof/core/sensory";

/** The intensities that are in sight at once; all others are one choice away. Common practice, no source. */
export const QUICK: readonly AttributeId[] = [
  "fruit.orchard",
  "fruit.dried",
  "sweet.vanilla",
  "spice.warm",
  "wood.toasted",
  "smoke.smoke",
  "feel.weight",
  "feel.burn",
  "time.finish",
];
