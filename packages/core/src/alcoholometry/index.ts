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
export { T15, T20, T60F } from "./reference-temperatures.ts";
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
export { temperaturesFromDensity } from "./temperature-from-density.ts";
export { factorTo60F } from "./volume-at-60f.ts";
export { weighPours } from "./weigh-pours.ts";
export type { Bench, PourOnScale } from "./weigh-pours.ts";
export { pouredByWeight } from "./poured-by-weight.ts";
export type { PouredByWeight, PouredWeight } from "./poured-by-weight.ts";
export { pouredBetweenReadings } from "./running-readings.ts";
export type { PouredBetween, ReadingFalls } from "./running-readings.ts";
export { adjustStrength } from "./adjust-strength.ts";
export type { AdjustedStrength, NotBetween } from "./adjust-strength.ts";
export { reduceInSteps } from "./reduce-in-steps.ts";
export type { ReducedInSteps, ReductionStep } from "./reduce-in-steps.ts";
export { makeUp } from "./make-up.ts";
export type { FinalAmount, MadeUp, NotMadeUp } from "./make-up.ts";
export { partsToFill } from "./parts-to-fill.ts";
export type { PartsToFill } from "./parts-to-fill.ts";
export { resolvePours } from "./resolve-pours.ts";
export type { NotResolved, PartPoured, PoursResolved } from "./resolve-pours.ts";
export { obscurationProof, solidsFromResidue, trueProofWithSolids } from "./obscuration.ts";
export type { SolidsRule, Unobscured } from "./obscuration.ts";
export { strengthToLift } from "./strength-to-lift.ts";
export type { NotLifted, StrengthToLift } from "./strength-to-lift.ts";
export { strengthFromMassAndVolume } from "./strength-from-mass-and-volume.ts";
export { evaporated } from "./evaporated.ts";
export type { Evaporated, LevelAndStrength } from "./evaporated.ts";
export { gaugingFigures } from "./us-gauging-figures.ts";
export type { GaugingFigures } from "./us-gauging-figures.ts";
export { abv15FromAbv20, abv20FromAbv15 } from "./strength-at-15.ts";
export {
  liquidOfPounds,
  litresOfAlcohol,
  poundsPerWineGallon,
  proofGallons,
  wineGallons,
} from "./us-gallons.ts";
