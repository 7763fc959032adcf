import type { AnswerOf, MixResult } from "@partsproof/house/protocol";
import { facts } from "./facts.ts";
import { abv, g, ml } from "./figures.ts";
import { doubt, known } from "./uncertain.ts";

// Two decimals of strength and density are what the formula is good for; --json gives every digit.

export const printMix = (pouredMl: number, result: MixResult): string => {
  const { uncertainty, asRead } = result;
  return facts([
    ["Strength", known(uncertainty?.abv20, "% vol at 20 °C", `${abv(result.abv20, 2)} at 20 °C`)],
    ["Proof", known(uncertainty?.proof60F, "at 60 °F", `${result.proof60F.toFixed(2)} at 60 °F`)],
    ["Poured", ml(pouredMl) + (asRead === undefined ? "" : `, read at ${asRead.celsius} °C`)],
    ["Result", known(uncertainty?.volumeMl, "mL at 20 °C", `${ml(result.volumeMl)} at 20 °C`)],
    ["As read", asRead === undefined ? null : `${ml(asRead.volumeMl)} at ${asRead.celsius} °C`],
    [
      result.contractionMl < 0 ? "Swelling" : "Contraction",
      `${Math.abs(result.contractionMl).toFixed(2)} mL`,
    ],
    // The mass is not known better than the volume.
    ["Mass", uncertainty === undefined ? g(result.massG) : null],
    ["By average", `${abv(result.naiveAbv20, 2)}, which leaves contraction out`],
    ...doubt(uncertainty?.abv20, "% vol", uncertainty?.takenAs ?? []),
  ]);
};

export const printDensity = (result: AnswerOf<"reckonDensity">): string =>
  `${result.kgPerM3.toFixed(2)} kg/m³`;

export const printTemperature = ({ celsius }: AnswerOf<"reckonTemperature">): string =>
  celsius.length === 1
    ? `${celsius[0]?.toFixed(2)} °C`
    : `${celsius.map((t) => `${t.toFixed(2)} °C`).join(" or ")}: it is densest in between, and the density alone does not say which`;

export const printConvert = (result: AnswerOf<"reckonConvert">): string => {
  const { amount } = result;
  return facts([
    ["Strength", `${abv(result.abv20, 2)} at 20 °C`],
    ["Proof", `${result.proof60F.toFixed(2)} at 60 °F`],
    ["By mass", `${result.massPercent.toFixed(2)} %`],
    ["At 15 °C", abv(result.abv15, 2)],
    ...(amount === undefined
      ? []
      : ([
          ["Volume", `${ml(amount.volumeMl)} at 20 °C (${g(amount.massG)})`],
          ["Alcohol", `${g(amount.ethanolG)}, ${amount.litresOfAlcohol.toFixed(4)} L at 20 °C`],
          ["Wine gallons", `${amount.wineGallons.toFixed(4)} gal at 60 °F`],
          ["Proof gallons", amount.proofGallons.toFixed(4)],
          [
            "If swallowed",
            `${amount.ukUnits.toFixed(1)} UK units, ${amount.usStandardDrinks.toFixed(1)} US standard drinks`,
          ],
        ] as const)),
  ]);
};
