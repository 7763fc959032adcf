import type { Batch, BatchPlan } from "@partsproof/house/protocol";
import { columns } from "./columns.ts";
import { contentsFacts } from "./contents.ts";
import { facts } from "./facts.ts";
import { abv, day, g, instant, ml, stated } from "./figures.ts";

export const printBatches = (batches: readonly Batch[]): string =>
  columns(
    batches,
    [
      { head: "Batch", cell: ({ name }) => name },
      { head: "Recipe", cell: ({ recipeName, recipeNumber }) => `${recipeName}, version ${recipeNumber}` },
      { head: "In", cell: ({ vesselLabel }) => vesselLabel },
      { head: "Made", cell: ({ madeAt }) => day(madeAt) },
      { head: "State", cell: ({ state }) => state },
      { head: "Due", cell: ({ restDueAt }) => day(restDueAt) },
      { head: "Holds", cell: ({ now }) => ml(now.volumeMl), right: true },
      { head: "Strength", cell: ({ now }) => abv(now.abv20), right: true },
      { head: "Id", cell: ({ id }) => id },
    ],
    "No batch yet: batch add",
  );

export const printBatch = (batch: Batch, currency: string): string =>
  facts([
    ["Batch", batch.name],
    ["Recipe", `${batch.recipeName}, version ${batch.recipeNumber}`],
    ["In", batch.vesselLabel],
    ["Made", instant(batch.madeAt)],
    [
      "State",
      batch.restDueAt === null || batch.restDays === 0
        ? batch.state
        : `${batch.state}, due ${day(batch.restDueAt)} after ${batch.restDays} days`,
    ],
    ["Poured", batch.poured.map(({ label, ml: v, g: m }) => `${ml(v)} (${g(m)}) of ${label}`).join("\n")],
    ["When made", `${ml(batch.made.volumeMl)} at ${abv(batch.made.abv20)}`],
    ...contentsFacts(batch.now, currency),
    ["Water", batch.reduction === null ? null : reductionText(batch.reduction)],
    ["Note", batch.note === "" ? null : batch.note],
    ["Id", batch.id],
  ]);

const reductionText = ({ waterTo, steps, done, left }: NonNullable<Batch["reduction"]>): string =>
  [
    `to ${stated(waterTo)} in ${steps} steps, ${done} done`,
    ...left.map(({ dueAt, addMl, afterAbv20 }) => `${day(dueAt)}  ${ml(addMl)}, to ${abv(afterAbv20)}`),
  ].join("\n");

export function printPlan(plan: BatchPlan, currency: string): string {
  const pours = plan.steps.flatMap((step) =>
    step.pours.map((pour) => ({ what: step.label, from: pour.label, ml: pour.ml, g: pour.g })),
  );
  const short = plan.issues.map(({ message }) => message).join("\n");
  const list = columns(
    pours,
    [
      { head: "Pour", cell: (p) => ml(p.ml), right: true },
      { head: "or", cell: (p) => g(p.g), right: true },
      { head: "Of", cell: ({ what }) => what },
      { head: "From", cell: ({ from }) => from },
    ],
    "Nothing to pour.",
  );
  const result = facts([
    ...contentsFacts(plan.result, currency),
    ["Not possible", short === "" ? null : short],
  ]);
  return `${list}\n\n${result}`;
}
