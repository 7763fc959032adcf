import type { BatchMake } from "@partsproof/house/protocol";
import { printPlan } from "./batch.ts";
import { columns } from "./columns.ts";
import { facts } from "./facts.ts";
import { ml, money } from "./figures.ts";

export function printMake(made: BatchMake, currency: string): string {
  const { plan, left, limitedBy, perVesselMinor, perPourMinor } = made;
  return [
    facts([
      ["Batch", ml(made.finalMl)],
      ["Limited by", limitedBy ?? "the vessels"],
      ["Shelf allows", ml(made.largestMl)],
      ["A vessel costs", perVesselMinor === null ? null : money(Math.round(perVesselMinor), currency)],
      [`${made.pourMl} mL cost`, perPourMinor === null ? null : money(Math.round(perPourMinor), currency)],
    ]),
    columns(
      made.limits,
      [
        { head: "Whiskey", cell: ({ label }) => label },
        { head: "Free", cell: ({ freeMl }) => ml(freeMl), right: true },
        { head: "Allows", cell: ({ allowsMl }) => ml(allowsMl), right: true },
      ],
      "",
    ),
    ...(plan === null ? [] : [printPlan(plan, currency)]),
    ...(left.length === 0
      ? []
      : [
          columns(
            left,
            [
              { head: "Bottle", cell: ({ label }) => label },
              { head: "Left", cell: ({ leftMl }) => (leftMl < 0.1 ? "used up" : ml(leftMl)), right: true },
            ],
            "",
          ),
        ]),
  ].join("\n\n");
}
