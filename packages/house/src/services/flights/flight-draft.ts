import type { Issue } from "../../protocol/index.ts";
import { alcoholAtMost } from "./alcohol-at-most.ts";
import { designFrom } from "./design.ts";
import { questionIssues } from "./draft-question.ts";
import { type Draft, glassesOfName, poursOf, tastersOf } from "./pours.ts";
import { sameName, type TasterNames } from "./shown-flight.ts";
import { type Asks, shortages } from "./offer.ts";
import { HouseRefusal } from "../refuse.ts";
import { nameOf, type Shelf } from "../shelf/index.ts";

/** Refuses a draft with all that is wrong with it, before anything is drawn. */
export function checkDraft(draft: Draft, shelf: Shelf, names: TasterNames): void {
  const unknown = unknownIds(draft, shelf, names);
  if (unknown.length > 0) throw new HouseRefusal(404, unknown);
  const asked = questionIssues(draft);
  const issues = [
    ...asked,
    ...howMany(draft),
    ...whoPours(draft, names),
    ...repeatedTasters(draft),
    ...target(draft, shelf),
  ];
  // How much is poured is known only of a layout that can be.
  if (asked.length === 0 && tastersOf(draft) > 0) issues.push(...shortages(shelf, asksFrom(draft, shelf)));
  if (issues.length > 0) throw new HouseRefusal(422, issues);
}

/** What a checked draft asks of the shelf: the same whatever is in which glass (F5, Q10). */
export function asksFrom(draft: Draft, shelf: Shelf): Asks {
  const { question, targetNameId, distractors, pourMl } = draft;
  const target = draft.glasses.find(({ vesselId }) => nameOf(shelf, vesselId).nameId === targetNameId);
  return {
    pours: poursOf(draft, target?.vesselId ?? null),
    distractors,
    glassesOfName: glassesOfName(draft),
    pourMl,
    atMost: alcoholAtMost(question, designFrom(draft, shelf, [])),
  };
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

function unknownIds(
  { glasses, controlVesselId, distractors, tasterIds }: Draft,
  shelf: Shelf,
  names: TasterNames,
): Issue[] {
  const ofThis = (what: string) => `the id of a ${what} of this household`;
  const known = new Set([...shelf.vessels.keys()].map((id) => nameOf(shelf, id).nameId));
  for (const id of shelf.whiskeys.keys()) known.add(`whiskey:${id}`);
  return [
    ...glasses.flatMap(({ vesselId }, i) =>
      shelf.vessels.has(vesselId)
        ? []
        : [issue("unknown_vessel", ["glasses", i, "vesselId"], "vessel", ofThis("vessel"), vesselId)],
    ),
    ...(controlVesselId === null || shelf.vessels.has(controlVesselId)
      ? []
      : [issue("unknown_vessel", ["controlVesselId"], "vessel", ofThis("vessel"), controlVesselId)]),
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

/** F1: a target that had to be in a glass would tell that it is. Q3: of `how_close` everybody is told that it is in one. */
function target({ question, targetNameId, glasses, distractors }: Draft, shelf: Shelf): Issue[] {
  if (targetNameId === null) return [];
  if (glasses.some(({ vesselId }) => nameOf(shelf, vesselId).nameId === targetNameId)) return [];
  const path = ["targetNameId"];
  if (question === "how_close")
    return [issue("target_not_poured", path, "the target", "a glass of it", targetNameId)];
  if (distractors.includes(targetNameId)) return [];
  return [issue("target_not_offered", path, "the target", "one of the names on offer", targetNameId)];
}
