import type { TrialSet } from "@partsproof/house/protocol";
import { columns } from "./columns.ts";
import { facts } from "./facts.ts";
import { abv, day, ml } from "./figures.ts";
import { printTrialPlan } from "./trial.ts";

export const printTrialSets = (sets: readonly TrialSet[]): string =>
  columns(
    sets,
    [
      { head: "Set", cell: ({ name }) => name },
      { head: "Of", cell: ({ plan }) => plan.parts.join(", ") },
      { head: "Trials", cell: ({ plan }) => String(plan.trials.length), right: true },
      { head: "Poured", cell: ({ made }) => String(made.length), right: true },
      { head: "Planned", cell: ({ createdAt }) => day(createdAt) },
      { head: "Id", cell: ({ id }) => id },
    ],
    "No set of bench trials yet: trial add",
  );

export function printTrialSet(set: TrialSet): string {
  const { name, plan, bottles, made, note, id, flight } = set;
  return [
    facts([
      ["Trials", name],
      ["Of", plan.parts.join(", ")],
      ["Poured", `${made.length} of ${plan.trials.length}`],
      ["Note", note === "" ? null : note],
      ["Id", id],
    ]),
    printTrialPlan(plan),
    ...(made.length === plan.trials.length
      ? []
      : [
          columns(
            bottles.flatMap(({ label, from, keptMl, shortMl }) => [
              ...from.map((one) => ({ what: label, from: one.label, amount: ml(one.ml) })),
              ...(keptMl > 0
                ? [{ what: label, from: "stays in its bottle for a glass of the flight", amount: ml(keptMl) }]
                : []),
              ...(shortMl > 0
                ? [{ what: label, from: "nowhere: the shelf is short", amount: ml(shortMl) }]
                : []),
            ]),
            [
              { head: "Draw", cell: ({ amount }) => amount, right: true },
              { head: "Of", cell: ({ what }) => what },
              { head: "From", cell: ({ from }) => from },
            ],
            "",
          ),
        ]),
    ...(flight === null ? [] : [printFlight(flight)]),
    ...(made.length === 0
      ? []
      : [
          columns(
            made,
            [
              { head: "Vial", cell: ({ label }) => label },
              { head: "Holds", cell: ({ leftMl }) => ml(leftMl), right: true },
              { head: "Strength", cell: (vial) => abv(vial.abv20), right: true },
              {
                head: "In flights",
                cell: ({ flights }) => flights.map((one) => `${one.name}: ${one.said}`).join(" / "),
              },
            ],
            "",
          ),
        ]),
  ].join("\n\n");
}

const ASKS = { like_best: "which is liked best", how_close: "how close each is" } as const;

/** The flight they are poured for, with why each glass is there. */
const printFlight = ({ question, glasses }: NonNullable<TrialSet["flight"]>): string =>
  [
    `For a flight that asks ${ASKS[question]}:`,
    ...glasses.map(
      ({ label, insteadOf, why }, i) =>
        `${i + 1}. ${label}${insteadOf === null ? "" : `, in the place of ${insteadOf}, which holds too little by now`}\n   ${why}`,
    ),
  ].join("\n");
