import { type Answerable, canAnswer } from "@partsproof/core/sensory";
import { askOfPlan, toFind } from "./ask-of-plan.ts";
import { RISKS } from "./asked-of-panel.data.ts";
import type { Cupboard } from "./cupboard.ts";
import { inSets, type Plan, tastersOf } from "./plan.ts";

export type PlanAnswer =
  | { readonly ok: false; readonly lacks: string }
  | {
      readonly ok: true;
      readonly finds: string;
      readonly answer: Answerable;
      /** What is missing, each naming the whiskey it is about. */
      readonly missing: readonly string[];
    };

/** Whether the plan's question can be answered with its tasters, evenings and what is left in the bottles. */
export function answerable(plan: Plan, { pourables }: Cupboard): PlanAnswer {
  const asked = askOfPlan(plan);
  if (!asked.ok) return asked;
  const byId = new Map(pourables.map((one) => [one.vesselId, one]));
  // Two by two a whiskey counts once, by its vessel; otherwise each glass has its share of the vessel.
  const once = "method" in asked.ask || asked.ask.question === "agree_with_myself";
  const each = plan.pours.flatMap(({ vesselId, glasses }) => {
    const { freeMl = 0, name = "" } = byId.get(vesselId) ?? {};
    return once
      ? [{ name, freeMl }]
      : Array.from({ length: glasses }, () => ({ name, freeMl: freeMl / glasses }));
  });
  const atHand = {
    tasters: Math.max(1, tastersOf(plan)),
    // Several sets an evening count as as many sittings.
    sittings: plan.sittings * (inSets(plan) ? plan.sets : 1),
    pourMl: plan.pourMl,
    leftMl: each.map(({ freeMl }) => freeMl),
  };
  const answer = canAnswer(asked.ask, atHand, RISKS);
  // Core numbers the whiskeys in the order given; people know them by name.
  const missing = answer.shortages.map(({ message }) =>
    message.replace(/^whiskey (\d+) /, (all, number: string) => {
      const name = each[Number(number) - 1]?.name;
      return name === undefined ? all : `${name} `;
    }),
  );
  return { ok: true, finds: toFind(asked.ask), answer, missing: [...new Set(missing)] };
}
