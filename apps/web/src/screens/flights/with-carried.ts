import type { QuestionId } from "@partsproof/core/sensory";
import type { Cupboard } from "./cupboard.ts";
import { type Plan, withGlasses, withQuestion } from "./plan.ts";

const QUESTIONS: readonly string[] = ["which_is_which", "like_best"];

/** Vessels that an address names and that can be poured from, in its order. */
export function carriedBy(
  query: URLSearchParams,
  { pourables }: Pick<Cupboard, "pourables">,
): readonly string[] {
  const known = new Set(pourables.map(({ vesselId }) => vesselId));
  return (query.get("glasses") ?? "").split(",").filter((id) => known.has(id));
}

/**
 * The plan with what an address carries, "glasses=<vessel>,<vessel>&question=like_best&name=…": vessels that can be poured from, in
 * their order; "towards=whiskey:id" asks how close all come to the one of them. What cannot be read of it is left out.
 */
export function withCarried(plan: Plan, query: URLSearchParams, cupboard: Pick<Cupboard, "pourables">): Plan {
  const vessels = carriedBy(query, cupboard);
  if (vessels.length === 0) return plan;
  const poured = cupboard.pourables.filter(({ vesselId }) => vessels.includes(vesselId));
  const towards = query.get("towards");
  const close = towards !== null && poured.some(({ nameId }) => nameId === towards);
  const question = query.get("question") ?? "";
  const asked = QUESTIONS.includes(question) ? withQuestion(plan, question as QuestionId) : plan;
  const name = query.get("name")?.trim().slice(0, 120) ?? "";
  const named = name === "" ? asked : { ...asked, name };
  const filled = [...new Set(vessels)].slice(0, 10).reduce((so, id) => withGlasses(so, id, 1), named);
  return close ? { ...withQuestion(filled, "how_close"), targetNameId: towards } : filled;
}
