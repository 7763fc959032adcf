import type { TrialPlan } from "@partsproof/house/protocol";
import { columns } from "./columns.ts";
import { facts } from "./facts.ts";

const few = (x: number): string => String(Number(x.toFixed(3)));

export function printTrialPlan(plan: TrialPlan): string {
  const { parts, trials, pourList } = plan;
  const numbered = trials.map((trial, n) => ({ ...trial, n: n + 1 }));
  const scale = trials.some(({ g }) => g !== null);
  return [
    columns(
      numbered,
      [
        { head: "Trial", cell: ({ n }) => String(n), right: true },
        ...parts.map((name, i) => ({
          head: `${name}, ${scale ? "g" : "mL"}`,
          cell: ({ ml, g }: (typeof numbered)[number]) => few((g ?? ml)[i] ?? 0),
          right: true as const,
        })),
        { head: "mL in all", cell: ({ totalMl }) => totalMl.toFixed(1), right: true },
        { head: "% vol", cell: ({ abv20 }) => (abv20 === null ? "-" : abv20.toFixed(1)), right: true },
        { head: "Off by", cell: ({ off }) => few(off), right: true },
      ],
      "",
    ),
    [
      "Bottle by bottle:",
      ...pourList.map(
        ({ part, ml, intoTrials }) => `${part}: ${ml.toFixed(1)} mL into ${intoTrials.join(", ")}`,
      ),
    ].join("\n"),
    facts([
      ["Poured", `${plan.totalMl.toFixed(1)} mL, ${plan.overMl.toFixed(1)} mL above what the trials measure`],
      ["Model", plan.plan === "own" ? null : `${plan.model}, ${plan.terms} terms`],
      [
        "Whole steps",
        plan.pouredEfficiency === null
          ? null
          : `${(100 * plan.pouredEfficiency).toFixed(1)} % of the plan's D-efficiency`,
      ],
      ["Note", plan.notes.length === 0 ? null : plan.notes.join("\n")],
    ]),
  ].join("\n\n");
}
