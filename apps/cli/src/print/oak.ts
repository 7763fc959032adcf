import type { OakResult } from "@partsproof/house/protocol";
import { facts } from "./facts.ts";

type Known = NonNullable<OakResult["soaksUpMl"]>;

const known = (one: Known | null, unit: string, decimals: number): string | null =>
  one === null ? null : `${one.low.toFixed(decimals)} to ${one.high.toFixed(decimals)} ${unit}: ${one.how}`;

export function printOak(dose: OakResult): string {
  const { grams, piecesAsInCask } = dose;
  return [
    facts([
      ["Area", `${dose.areaCm2.toFixed(1)} cm² in ${dose.volumeMl.toFixed(0)} mL`],
      ["A litre", `${dose.areaPerLitre.toFixed(1)} cm²`],
      [
        "Against a cask",
        `${dose.caskRatio.toFixed(2)} of a 200 L cask's 92 ± 5 cm²/L (${dose.caskRatioLow.toFixed(2)} to ${dose.caskRatioHigh.toFixed(2)})`,
      ],
      [
        "Grams",
        grams === null
          ? null
          : `${dose.gramsPerLitre?.toFixed(1)} g/L; ${grams.weighed ? `${grams.likely.toFixed(1)} g weighed` : `${grams.low.toFixed(1)} to ${grams.high.toFixed(1)} g by size`}`,
      ],
      [
        "Cask contact",
        `${dose.asInCaskCm2.likely.toFixed(0)} cm² (${dose.asInCaskCm2.low.toFixed(0)} to ${dose.asInCaskCm2.high.toFixed(0)})${piecesAsInCask === null ? "" : `, ${piecesAsInCask.toFixed(1)} such pieces`}`,
      ],
      ["Soaks up", known(dose.soaksUpMl, "mL", 0)],
      ["", known(dose.soaksUpFirstDaysMl, "mL", 0)],
      ["Can give", known(dose.extractAtMostG, "g", 2)],
    ]),
    dose.notKnown,
    dose.cautions.join("\n"),
  ].join("\n\n");
}
