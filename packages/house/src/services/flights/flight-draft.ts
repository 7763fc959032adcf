import type { z } from "zod";
import type { FlightDraft, Issue } from "../../protocol/index.ts";
import { sameName, type TasterNames } from "./shown-flight.ts";
import { shortages } from "./offer.ts";
import { HouseRefusal } from "../refuse.ts";
import { nameOf, type Shelf } from "../shelf/index.ts";

type Draft = z.infer<typeof FlightDraft>;

/** Refuses a draft with all that is wrong with it, before anything is drawn. */
export function checkDraft(draft: Draft, shelf: Shelf, names: TasterNames): void {
  const unknown = unknownIds(draft, shelf, names);
  if (unknown.length > 0) throw new HouseRefusal(404, unknown);
  const issues = [
    ...notServed(draft),
    ...howMany(draft),
    ...whoPours(draft, names),
    ...repeatedTasters(draft),
    ...target(draft, shelf),
  ];
  const asks = { ...draft, tasters: draft.tasterIds.length + draft.seats };
  if (asks.tasters > 0) issues.push(...shortages(shelf, asks));
  if (issues.length > 0) throw new HouseRefusal(422, issues);
}

const issue = (
  code: string,
  path: Issue["path"],
  what: string,
  limit: string,
  received: string | number | null,
): Issue => ({
  code,
  path,
  limit,
  received,
  message: `${what} requires ${limit}, got ${received === null ? "none" : String(received)}`,
});

function unknownIds({ glasses, distractors, tasterIds }: Draft, shelf: Shelf, names: TasterNames): Issue[] {
  const ofThis = (what: string) => `the id of a ${what} of this household`;
  const known = new Set([...shelf.vessels.keys()].map((id) => nameOf(shelf, id).nameId));
  for (const id of shelf.whiskeys.keys()) known.add(`whiskey:${id}`);
  return [
    ...glasses.flatMap(({ vesselId }, i) =>
      shelf.vessels.has(vesselId)
        ? []
        : [issue("unknown_vessel", ["glasses", i, "vesselId"], "vessel", ofThis("vessel"), vesselId)],
    ),
    ...distractors.flatMap((nameId, i) =>
      known.has(nameId)
        ? []
        : [issue("unknown_name", ["distractors", i], "name", "a name of this household's shelf", nameId)],
    ),
    ...tasterIds.flatMap((id, i) =>
      names.has(id) ? [] : [issue("unknown_taster", ["tasterIds", i], "taster", ofThis("taster"), id)],
    ),
  ];
}

/** Until the other layouts are drawn. */
const notServed = ({ question }: Draft): Issue[] =>
  question === "which_is_which" || question === "like_best"
    ? []
    : [issue("question_not_served", ["question"], "a flight", "which_is_which or like_best", question)];

const MOST_TASTERS = 12;

/** F2: those named and the seats together. */
function howMany({ tasterIds, seats }: Draft): Issue[] {
  const tasters = tasterIds.length + seats;
  if (tasters === 0) return [issue("taster_needed", ["tasterIds"], "a flight", "a taster or a seat", 0)];
  return tasters <= MOST_TASTERS
    ? []
    : [
        issue(
          "too_many_tasters",
          ["seats"],
          "a flight",
          `at most ${MOST_TASTERS} tasters and seats`,
          tasters,
        ),
      ];
}

/** F3, F4. */
function whoPours({ pouring, pourer, tasterIds, seats }: Draft, names: TasterNames): Issue[] {
  if (pouring === "alone") {
    const one = "exactly 1 taster when pouring alone";
    return [
      ...(tasterIds.length === 1 && seats === 0
        ? []
        : [issue("alone_needs_one", ["tasterIds"], "a flight", one, tasterIds.length + seats)]),
      ...(pourer === null
        ? []
        : [issue("alone_has_no_pourer", ["pourer"], "a flight", "no pourer when pouring alone", pourer)]),
    ];
  }
  if (pourer === null) {
    return [issue("pourer_needed", ["pourer"], "a flight", "a pourer who does not taste", null)];
  }
  return tasterIds.some((id) => sameName(names.get(id) ?? "", pourer))
    ? [issue("pourer_tastes", ["pourer"], "a flight", "a pourer who is none of its tasters", pourer)]
    : [];
}

function repeatedTasters({ tasterIds }: Draft): Issue[] {
  return tasterIds.flatMap((id, i) =>
    tasterIds.indexOf(id) < i
      ? [issue("taster_repeated", ["tasterIds", i], "a flight", "each taster once", id)]
      : [],
  );
}

/** F1: a target that had to be in a glass would tell that it is. */
function target({ targetNameId, glasses, distractors }: Draft, shelf: Shelf): Issue[] {
  if (targetNameId === null || distractors.includes(targetNameId)) return [];
  return glasses.some(({ vesselId }) => nameOf(shelf, vesselId).nameId === targetNameId)
    ? []
    : [
        issue(
          "target_not_offered",
          ["targetNameId"],
          "the target",
          "one of the names on offer",
          targetNameId,
        ),
      ];
}
