import type { SampleResult, WeighOutResult, WeighResult } from "@partsproof/house/protocol";
import { columns } from "./columns.ts";
import { facts } from "./facts.ts";
import { abv, g, ml } from "./figures.ts";
import { digits, doubt, known } from "./uncertain.ts";

const air = (inAir: boolean): string =>
  inAir ? "as a scale shows it in air" : "in vacuum, which is the mass";

export function printWeigh(result: WeighResult): string {
  const { uncertainty } = result;
  const figure = uncertainty?.massG ?? uncertainty?.ml20;
  return facts([
    // Grams that were typed are shown as they were.
    [
      "Weight",
      `${uncertainty?.ml20 ? Number(result.grams.toPrecision(9)) : result.grams.toFixed(digits(uncertainty?.massG))} g, ${air(result.inAir)}`,
    ],
    ["Mass", uncertainty?.ml20 ? null : known(uncertainty?.massG, "g", `${result.massG.toFixed(2)} g`)],
    ["Volume", `${result.ml.toFixed(digits(uncertainty?.ml20))} mL at ${result.celsius} °C`],
    ["", known(uncertainty?.ml20, "mL at 20 °C", `${result.ml20.toFixed(2)} mL at 20 °C`)],
    [
      "Density",
      uncertainty === undefined ? `${result.kgPerM3.toFixed(2)} kg/m³ at ${result.celsius} °C` : null,
    ],
    ["Alcohol", uncertainty === undefined ? g(result.ethanolG) : null],
    ...doubt(figure, uncertainty?.massG ? "g" : "mL", uncertainty?.takenAs ?? []),
  ]);
}

export function printSample(result: SampleResult): string {
  const { uncertainty, otherwiseAbv20 } = result;
  return facts([
    ["Strength", known(uncertainty?.abv20, "% vol at 20 °C", `${abv(result.abv20, 2)} at 20 °C`)],
    ["Proof", uncertainty === undefined ? `${result.proof60F.toFixed(2)} at 60 °F` : null],
    [
      "Density",
      uncertainty === undefined ? `${result.kgPerM3.toFixed(2)} kg/m³ at ${result.celsius} °C` : null,
    ],
    ["Weighed", air(result.inAir)],
    [
      result.inAir ? "In vacuum" : "In air",
      otherwiseAbv20 === null
        ? null
        : `${abv(otherwiseAbv20, digits(uncertainty?.abv20))}, if the grams were ${result.inAir ? "the mass" : "a scale's reading: --in-air"}`,
    ],
    ["Mind", "dissolved solids read as weakness"],
    ...doubt(uncertainty?.abv20, "% vol", uncertainty?.takenAs ?? []),
  ]);
}

export function printWeighOut(result: WeighOutResult): string {
  const { pours, reducing, uncertainty } = result;
  const lines = [
    ...pours.map((pour, n) => ({ ...pour, name: `Part ${n + 1}` })),
    ...(reducing === null ? [] : [{ ...reducing, name: reducing.abv20 === 0 ? "Water" : "Reduce with" }]),
  ];
  const table = columns(
    lines,
    [
      { head: "", cell: ({ name }) => name },
      { head: "Strength", cell: ({ abv20 }) => abv(abv20, 2), right: true },
      { head: "Planned", cell: ({ plannedG }) => g(plannedG), right: true },
      { head: "Poured", cell: ({ pouredG }) => g(pouredG), right: true },
      { head: "Still to pour", cell: ({ toPourG }) => g(toPourG), right: true },
      { head: "or", cell: ({ toPourMl }) => ml(toPourMl), right: true },
      { head: "Scale shows", cell: ({ scaleG }) => g(scaleG), right: true },
    ],
    "",
  );
  return `${table}\n${facts([
    ["Strength", known(uncertainty?.abv20, "% vol at 20 °C", `${abv(result.abv20, 2)} at 20 °C`)],
    ["Proof", uncertainty === undefined ? `${result.proof60F.toFixed(2)} at 60 °F` : null],
    ["Result", `${ml(result.finalMl)} at 20 °C (${g(result.finalG)}), if all is poured so`],
    ["Grams", `${air(result.inAir)}; mL at ${result.celsius} °C`],
    [
      "Ratio",
      result.ratioKept
        ? null
        : `not kept: a part is off by ${(100 * result.worstShareOff).toFixed(1)} points of the whole`,
    ],
    ["Target", result.strengthKept ? null : "the strength asked for is not reached any more"],
    ...doubt(uncertainty?.abv20, "% vol", uncertainty?.takenAs ?? []),
  ])}`;
}
