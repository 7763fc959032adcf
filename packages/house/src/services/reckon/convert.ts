import {
  abv15FromAbv20,
  abv20FromMassFraction,
  describeLiquid,
  liquidOfVolume,
  litresOfAlcohol,
  massFractionFromAbv20,
  massFractionFromProof60F,
  proof60FFromMassFraction,
  proofGallons,
  wineGallons,
} from "@partsproof/core/alcoholometry";
import {
  type Abv20,
  abv20,
  type MassFraction,
  massFraction,
  millilitres20,
  proof60F,
} from "@partsproof/core/quantity";
import { alcoholServed } from "@partsproof/core/sensory";
import type { BodyRead, ConvertResult } from "../../protocol/index.ts";

export function reckonConvert(body: BodyRead<"reckonConvert">): ConvertResult {
  const p = massFractionOf(body);
  const strength = abv20FromMassFraction(p);
  return {
    abv20: strength,
    proof60F: proof60FFromMassFraction(p),
    massPercent: 100 * p,
    abv15: abv15FromAbv20(strength),
    ...(body.volumeMl === undefined ? {} : { amount: amountOf(body.volumeMl, strength) }),
  };
}

function massFractionOf(body: BodyRead<"reckonConvert">): MassFraction {
  if (body.abv20 !== undefined) return massFractionFromAbv20(abv20(body.abv20));
  if (body.proof60F !== undefined) return massFractionFromProof60F(proof60F(body.proof60F));
  return massFraction(body.massPercent / 100);
}

function amountOf(volumeMl: number, strength: Abv20): NonNullable<ConvertResult["amount"]> {
  const liquid = describeLiquid(liquidOfVolume(millilitres20(volumeMl), strength));
  const { ethanolG, massG } = liquid;
  const { ukUnits, usStandardDrinks } = alcoholServed([{ volumeMl, ethanolG }]);
  return {
    volumeMl,
    massG,
    ethanolG,
    litresOfAlcohol: litresOfAlcohol(liquid),
    wineGallons: wineGallons(liquid),
    proofGallons: proofGallons(liquid),
    ukUnits,
    usStandardDrinks,
  };
}
