export { density } from "./density.ts";
export { massFractionFromDensity } from "./mass-fraction-from-density.ts";
export { abv20FromMassFraction, massFractionFromAbv20 } from "./strength-by-volume.ts";
export {
  abv20FromProof60F,
  massFractionFromProof60F,
  proof60FFromAbv20,
  proof60FFromMassFraction,
} from "./proof.ts";
export { abv20OfStrength, massFractionOfStrength } from "./strength.ts";
export { describeLiquid, liquidOfVolume } from "./liquid.ts";
export type { DescribedLiquid, Liquid } from "./liquid.ts";
export { mix } from "./mix.ts";
export type { Mixture, Pour } from "./mix.ts";
export { mixParts } from "./mix-parts.ts";
export type { Part } from "./mix-parts.ts";
export { waterToStrength } from "./water-to-strength.ts";
export type { WaterToStrength } from "./water-to-strength.ts";
export { waterToFill } from "./water-to-fill.ts";
export type { WaterToFill } from "./water-to-fill.ts";
export { fillVessel } from "./fill-vessel.ts";
export type { FillVessel } from "./fill-vessel.ts";
export type { OutOfReach } from "./out-of-reach.ts";
export { T20, T60F } from "./reference-temperatures.ts";
export type { OutOfReachBut } from "./out-of-reach.ts";
export { freezingPoint } from "./freezing-point.ts";
export { volumeAt20FromVolumeAt, volumeAtFromVolumeAt20 } from "./volume-at-temperature.ts";
export { abv20FromDensity } from "./strength-from-density.ts";
export { gauge } from "./gauge.ts";
export type { Gauged, NotGauged } from "./gauge.ts";
export { readingOf } from "./reading-of.ts";
export type { HydrometerReading } from "./hydrometer.ts";
export { CONVENTIONAL_AIR } from "./air.data.ts";
export { massFromScale, scaleReading } from "./air-buoyancy.ts";
export type { Air } from "./air-buoyancy.ts";
export { volumeFromWeight, weigh } from "./weigh.ts";
export type { Weighed, Weighing } from "./weigh.ts";
