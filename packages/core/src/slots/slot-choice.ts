import { known } from "../blending/index.ts";
import type { FillProblem } from "./fill-problem.ts";
import { printCondition } from "./print-rule.ts";
import { verdictOf } from "./verdict.ts";
import type { Verdict } from "./verdict.ts";
import type { RuledWhiskey } from "./ruled-whiskey.ts";

/** A condition in words, with the value that breaks it or the fact that is missing. */
export type Broken = { readonly rule: string; readonly value: number | string };
export type Missing = { readonly rule: string; readonly fact: string };

/** Which whiskeys can stand in a slot, judged by themselves; what looks at another slot is judged with it. */
export type SlotChoice = {
  readonly candidates: readonly string[];
  /** Each breaks a rule, whatever else is found out about it. */
  readonly rejected: readonly {
    readonly id: string;
    readonly breaks: readonly Broken[];
    readonly missing: readonly Missing[];
  }[];
  /** These break nothing that is known; what is missing decides. */
  readonly asked: readonly { readonly id: string; readonly missing: readonly Missing[] }[];
};

export function slotChoice(problem: FillProblem, slot: number): SlotChoice {
  const candidates: string[] = [];
  const rejected: { id: string; breaks: Broken[]; missing: Missing[] }[] = [];
  const asked: { id: string; missing: Missing[] }[] = [];
  for (const whiskey of problem.whiskeys) {
    const { id } = whiskey;
    const breaks: Broken[] = [];
    const missing: Missing[] = [];
    for (const [rule, verdict] of verdicts(problem, slot, whiskey)) {
      if (verdict.state === "broken") breaks.push({ rule, value: verdict.value });
      if (verdict.state === "unknown") missing.push({ rule, fact: verdict.fact });
    }
    if (breaks.length > 0) rejected.push({ id, breaks, missing });
    else if (missing.length > 0) asked.push({ id, missing });
    else candidates.push(id);
  }
  return { candidates, rejected, asked };
}

function* verdicts(
  { slots, pouredMl }: FillProblem,
  slot: number,
  whiskey: RuledWhiskey,
): Generator<readonly [rule: string, verdict: Verdict]> {
  const { ids, rule, parts } = slots[slot]!;
  if (ids !== undefined && !ids.includes(whiskey.id))
    yield ["the named whiskey", { state: "broken", value: whiskey.id }];
  for (const condition of rule)
    if (condition.about !== "same") yield [printCondition(condition), verdictOf(condition, whiskey)];
  if (pouredMl === undefined) return;
  const needed = (pouredMl * parts) / slots.reduce((sum, one) => sum + one.parts, 0);
  const { availableMl } = whiskey;
  const words = `at least ${Math.round(needed * 100) / 100} mL on the shelf`;
  if (!known(availableMl)) yield [words, { state: "unknown", fact: "volume left" }];
  else if (availableMl < needed * (1 - 1e-12)) yield [words, { state: "broken", value: availableMl }];
}
