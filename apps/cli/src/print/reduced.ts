import type { EvaporatedResult, FillResult, LiftResult, ReduceResult } from "@partsproof/house/protocol";
import { columns } from "./columns.ts";
import { facts } from "./facts.ts";
import { abv, g, ml } from "./figures.ts";
import { doubt, known } from "./uncertain.ts";

const liquid = (strength: number): string =>
  strength === 0 ? "water" : `the ${Number(strength.toFixed(2))} % vol`;

export function printReduce(result: ReduceResult): string {
  const { asRead, added, parts, uncertainty } = result;
  const others = (added ?? []).filter(({ abv20 }) => abv20 !== 0);
  const water = others.length === 0 || (added ?? []).length > others.length;
  const main = facts([
    ["Liquid", ml(result.liquidMl)],
    ...(parts ?? []).map((part) => ["", `${ml(part.ml)} or ${g(part.g)} of ${liquid(part.abv20)}`] as const),
    ["Water", water ? `${ml(result.waterMl)} or ${g(result.waterG)}` : null],
    ...others.map((one) => ["Add", `${ml(one.ml)} or ${g(one.g)} of ${liquid(one.abv20)}`] as const),
    [
      "Result",
      `${known(uncertainty?.finalMl, "mL at 20 °C", `${ml(result.finalMl)} at 20 °C`)}${result.finalG === undefined || uncertainty !== undefined ? "" : ` (${g(result.finalG)})`}`,
    ],
    [
      "As read",
      asRead === undefined
        ? null
        : `${ml(asRead.liquidMl)} and ${asRead.addedMl.map(ml).join(" and ")} come to ${ml(asRead.finalMl)}, all at ${asRead.celsius} °C`,
    ],
    ["By subtraction", water ? `${ml(result.naiveWaterMl)} of water, which leaves contraction out` : null],
    ["To add", uncertainty?.addMl ? known(uncertainty.addMl, "mL at 20 °C", "") : null],
    ["Strength", uncertainty === undefined ? null : known(uncertainty.abv20, "% vol at 20 °C", "")],
    ...doubt(uncertainty?.abv20, "% vol", uncertainty?.takenAs ?? []),
  ]);
  return result.steps === undefined ? main : `${main}\n\n${printSteps(result.steps)}`;
}

const printSteps = (steps: NonNullable<ReduceResult["steps"]>): string =>
  columns(
    steps.map((step, n) => ({ ...step, n: n + 1 })),
    [
      { head: "Step", cell: ({ n }) => String(n), right: true },
      { head: "Add", cell: ({ addMl }) => ml(addMl), right: true },
      { head: "or", cell: ({ addG }) => g(addG), right: true },
      { head: "Then", cell: (step) => ml(step.volumeMl), right: true },
      { head: "of", cell: ({ abv20 }) => abv(abv20, 2), right: true },
    ],
    "",
  );

export const printFill = (result: FillResult): string =>
  facts([
    ["Add", `${ml(result.addMl)} or ${g(result.addG)}`],
    ["Strength", `${abv(result.abv20, 2)} at 20 °C`],
    ["Proof", `${result.proof60F.toFixed(2)} at 60 °F`],
    ["Result", `${ml(result.finalMl)} at 20 °C`],
    ["By the gap", `${ml(result.naiveAddMl)}, which leaves contraction out`],
  ]);

export function printLift({ bottles, needed }: LiftResult): string {
  const table = columns(
    bottles,
    [
      { head: "With", cell: ({ abv20 }) => abv(abv20, 2), right: true },
      { head: "Add", cell: ({ addMl }) => (addMl === null ? "-" : ml(addMl)), right: true },
      { head: "or", cell: ({ addG }) => (addG === null ? "-" : g(addG)), right: true },
      { head: "Comes to", cell: ({ finalMl }) => (finalMl === null ? "-" : ml(finalMl)), right: true },
      {
        head: "",
        cell: ({ issue, fits }) =>
          issue ? `cannot; nearest is ${issue.limit}` : fits === false ? "more than there is room for" : "",
      },
    ],
    "",
  );
  const room =
    needed === null
      ? ""
      : `${ml(needed.roomMl)} does it at ${abv(needed.abv20, 2)} (${needed.proof60F.toFixed(2)} proof)`;
  return [table, room].filter((text) => text !== "").join("\n");
}

export function printEvaporated(result: EvaporatedResult): string {
  const { uncertainty, waterG } = result;
  return facts([
    [
      "Ethanol",
      known(uncertainty?.ethanolG, "g", g(result.ethanolG)) +
        (uncertainty === undefined ? share(result.ethanolShare) : ""),
    ],
    [waterG < 0 ? "Water in" : "Water", known(uncertainty?.waterG, "g", g(Math.abs(waterG)))],
    ["In all", known(uncertainty?.massG, "g", g(result.massG))],
    ["Level", uncertainty === undefined ? `${ml(result.volumeMl)} lower at 20 °C` : null],
    ["What went", result.abv20Gone === null || uncertainty !== undefined ? null : abv(result.abv20Gone)],
    ...doubt(uncertainty?.ethanolG, "g of ethanol", uncertainty?.takenAs ?? []),
    [
      "Mind",
      uncertainty !== undefined && uncertainty.ethanolG.interval95[0] < 0
        ? "the errors are as large as what went: nothing need have gone"
        : null,
    ],
  ]);
}

const share = (of: number): string => ` (${(100 * of).toFixed(1)} % of what there was)`;
