import type { AnswerOf, MixResult, ReduceResult } from "@partsproof/house/protocol";
import { facts } from "./facts.ts";
import { abv, g, ml } from "./figures.ts";

// Two decimals of strength and density are what the formula is good for; --json gives every digit.

export const printMix = (pouredMl: number, result: MixResult): string =>
  facts([
    ["Strength", `${abv(result.abv20, 2)} at 20 °C`],
    ["Proof", `${result.proof60F.toFixed(2)} at 60 °F`],
    ["Poured", ml(pouredMl)],
    ["Result", `${ml(result.volumeMl)} at 20 °C`],
    [
      result.contractionMl < 0 ? "Swelling" : "Contraction",
      `${Math.abs(result.contractionMl).toFixed(2)} mL`,
    ],
    ["Mass", g(result.massG)],
    ["By average", `${abv(result.naiveAbv20, 2)}, which leaves contraction out`],
  ]);

export const printReduce = (result: ReduceResult): string =>
  facts([
    ["Liquid", ml(result.liquidMl)],
    ["Water", `${ml(result.waterMl)} or ${g(result.waterG)}`],
    ["Result", `${ml(result.finalMl)} at 20 °C`],
    ["By subtraction", `${ml(result.naiveWaterMl)} of water, which leaves contraction out`],
  ]);

export const printDensity = (result: AnswerOf<"reckonDensity">): string =>
  `${result.kgPerM3.toFixed(2)} kg/m³`;

export const printConvert = (result: AnswerOf<"reckonConvert">): string =>
  facts([
    ["Strength", `${abv(result.abv20, 2)} at 20 °C`],
    ["Proof", `${result.proof60F.toFixed(2)} at 60 °F`],
    ["By mass", `${result.massPercent.toFixed(2)} %`],
  ]);
