import type { GaugeResult } from "@partsproof/house/protocol";
import { facts } from "./facts.ts";
import { abv } from "./figures.ts";
import { doubt, known } from "./uncertain.ts";

const RULE = {
  as_read: "US law takes it as it reads up to 400 mg in 100 mL (27 CFR 30.31)",
  add_obscuration: "US law adds it, from 400 to 600 mg in 100 mL (27 CFR 30.31)",
  distil: "US law has it distilled first, above 600 mg in 100 mL (27 CFR 30.31): take this for a guess",
} as const;

export function printGauge(result: GaugeResult): string {
  const { solids, uncertainty } = result;
  return facts([
    ["True proof", known(uncertainty?.trueProof, "at 60 °F", `${result.trueProof.toFixed(2)} at 60 °F`)],
    ["Strength", known(uncertainty?.abv20, "% vol at 20 °C", `${abv(result.abv20, 2)} at 20 °C`)],
    [
      "Density",
      uncertainty === undefined
        ? `${result.kgPerM3.toFixed(2)} kg/m³ at ${Number(result.celsius.toFixed(2))} °C, ${result.kgPerM3At20.toFixed(2)} at 20 °C`
        : null,
    ],
    ...(solids === undefined
      ? []
      : ([
          ["As it seems", `${solids.apparentProof.toFixed(2)} proof`],
          [
            "Solids",
            `${solids.mgPer100Ml} mg in 100 mL hide ${solids.obscurationProof.toFixed(2)} proof: ${solids.matters ? "it matters" : "too little to matter"}`,
          ],
          ["By law", RULE[solids.rule]],
          ["Mind", solids.inRange ? null : "the rule was found for 80 to 100 proof; here it is a guess"],
        ] as const)),
    ...doubt(uncertainty?.abv20, "% vol", uncertainty?.takenAs ?? []),
  ]);
}
