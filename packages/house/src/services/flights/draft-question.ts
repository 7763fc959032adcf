import { BLIND_CODES, MAX_GLASSES } from "@partsproof/core/sensory";
import type { Issue } from "../../protocol/index.ts";
import { type Draft, tastersOf } from "./pours.ts";
import { codedInSet, inSets } from "./question.ts";

type Path = Issue["path"];

type Received = string | number | boolean | null | undefined;

const issue = (code: string, path: Path, limit: string, received: Received, what = "a flight"): Issue => ({
  code,
  path,
  limit,
  received,
  message: `${what} requires ${limit}, got ${String(received ?? "none")}`,
});

/** Most glasses of a taster's two rounds: eight, twice. */
const MOST_IN_A_ROUND = 8;
const MOST_ALONE = 10;

/** Q1 to Q6: what a draft's question needs and it lacks, and what it has no use for. */
export function questionIssues(draft: Draft): Issue[] {
  return [...notAsked(draft), ...lacking(draft), ...tooMany(draft)];
}

/** What is sent where the question has no use for it: refused, for it would look as if it had been taken. */
function notAsked(draft: Draft): Issue[] {
  const { question, method, pouring } = draft;
  const alone = pouring === "alone";
  const sets = inSets(question);
  const rounds = question === "agree_with_myself";
  const inOneRow = !sets && !rounds;
  const uses: readonly (readonly [field: string, code: string, sent: Received, allowed: boolean])[] = [
    ["method", "method_not_asked", method, sets],
    ["sets", "sets_not_asked", draft.sets === 1 ? null : draft.sets, sets],
    ["asked", "asked_not_asked", draft.asked, method === "paired"],
    // Alone there is no seal to put it under.
    ["expectedVesselId", "expected_not_asked", draft.expectedVesselId, method === "paired" && !alone],
    ["reference", "reference_not_asked", draft.reference || null, question === "how_close"],
    ["repeats", "repeats_not_asked", draft.repeats || null, inOneRow && !alone],
    ["controlVesselId", "control_not_asked", draft.controlVesselId, inOneRow && !alone],
    [
      "glassesEach",
      "glasses_each_not_asked",
      draft.glassesEach,
      !alone && (question === "like_best" || question === "which_is_which"),
    ],
    ["late", "late_not_asked", draft.late || null, !alone && !sets && question !== "which_is_which"],
    ["distractors", "distractors_not_asked", draft.distractors.length || null, !sets],
  ];
  const named = alone ? `${question} poured alone` : question;
  return [
    ...uses.flatMap(([field, code, sent, allowed]) =>
      sent === null || allowed ? [] : [issue(code, [field], `no ${field} for ${named}`, sent)],
    ),
    ...(alone && rounds
      ? [issue("alone_has_no_rounds", ["pouring"], `someone else to pour for ${question}`, pouring)]
      : []),
  ];
}

function lacking(draft: Draft): Issue[] {
  const { question, method, asked, expectedVesselId, glasses, targetNameId } = draft;
  if (inSets(question)) {
    const vesselIds = glasses.map(({ vesselId }) => vesselId);
    return [
      ...(method === null ? [issue("method_needed", ["method"], `a method for ${question}`, null)] : []),
      ...(glasses.length === 2
        ? []
        : [issue("two_glasses_needed", ["glasses"], `two vessels for ${question}`, glasses.length)]),
      ...(new Set(vesselIds).size === vesselIds.length
        ? []
        : [issue("same_vessel_twice", ["glasses", 1, "vesselId"], "two different vessels", vesselIds[1])]),
      ...(method === "paired" && asked === null
        ? [issue("asked_needed", ["asked"], 'what is asked for, such as "sweeter"', null)]
        : []),
      ...(expectedVesselId === null || vesselIds.includes(expectedVesselId)
        ? []
        : [issue("expected_unknown", ["expectedVesselId"], "one of its two vessels", expectedVesselId)]),
    ];
  }
  if (question === "how_close" && targetNameId === null)
    return [issue("target_needed", ["targetNameId"], "a target for how_close", null)];
  return [];
}

/** Coded glasses each taster gets. */
export function glassesEachOf(draft: Draft): number {
  const { question, method, sets, glasses, repeats, controlVesselId, glassesEach } = draft;
  if (inSets(question)) return method === null ? 0 : sets * codedInSet(method);
  if (question === "agree_with_myself") return 2 * glasses.length;
  return glassesEach ?? glasses.length + repeats + Number(controlVesselId !== null);
}

function tooMany(draft: Draft): Issue[] {
  const { question, glasses, repeats, controlVesselId, glassesEach, pouring } = draft;
  if (inSets(question)) return pouring === "alone" ? marks(draft) : codes(draft);
  const issues: Issue[] = [];
  const most =
    question === "agree_with_myself" ? MOST_IN_A_ROUND : pouring === "alone" ? MOST_ALONE : MAX_GLASSES;
  const inARow = question === "agree_with_myself" ? glasses.length : glassesEachOf(draft);
  if (inARow > most) {
    issues.push(issue("too_many_glasses", ["glasses"], `at most ${most} glasses for each taster`, inARow));
  }
  if (glassesEach !== null && glassesEach >= glasses.length) {
    const limit = `fewer glasses for each taster than the ${glasses.length} there are`;
    issues.push(issue("glasses_each_too_many", ["glassesEach"], limit, glassesEach));
  }
  if (glassesEach !== null && repeats > 0)
    issues.push(issue("repeats_not_asked", ["repeats"], "no repeats beside glassesEach", repeats));
  if (glassesEach !== null && controlVesselId !== null)
    issues.push(
      issue("control_not_asked", ["controlVesselId"], "no control beside glassesEach", controlVesselId),
    );
  if (repeats > glasses.length) {
    issues.push(issue("repeats_too_many", ["repeats"], `at most ${glasses.length} repeats`, repeats));
  }
  if (controlVesselId !== null && glasses.some(({ vesselId }) => vesselId === controlVesselId)) {
    const limit = "a control that is none of its glasses";
    issues.push(issue("control_among_glasses", ["controlVesselId"], limit, controlVesselId));
  }
  return [...issues, ...codes(draft)];
}

/** Q18: every glass of somebody alone has a mark, and there are ten. */
function marks(draft: Draft): Issue[] {
  const { method, sets } = draft;
  if (method === null || glassesEachOf(draft) <= MOST_ALONE) return [];
  const most = Math.floor(MOST_ALONE / codedInSet(method));
  return [
    issue("too_many_glasses", ["sets"], `at most ${most} sets, ${MOST_ALONE} marked glasses, alone`, sets),
  ];
}

/** Every code is used once in a flight, and there are no more of three digits. */
function codes(draft: Draft): Issue[] {
  const count = tastersOf(draft) * glassesEachOf(draft);
  if (count <= BLIND_CODES.length) return [];
  return [issue("too_many_codes", ["sets"], `at most ${BLIND_CODES.length} coded glasses in all`, count)];
}
