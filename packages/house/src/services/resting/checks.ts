import { born } from "../birth.ts";
import type { Handlers } from "../handler.ts";
import { refuse, staleEdit, unknownId } from "../refuse.ts";
import type { CheckTastingRow } from "../rows.ts";
import { knownRest, momentOf, needOpen } from "./known-rest.ts";
import { restTold } from "./read-rests.ts";

/** Of one rest: what the model can be asked. */
const MOST_CHECKS = 200;
const SENSES = ["nose", "palate", "finish"] as const;

export const checkHandlers: Handlers<"addCheck" | "removeCheck"> = {
  /** O4: kept as it was written; what it says of each attribute is read when it is asked for. */
  addCheck: ({ house, at, body }) =>
    house.store.transaction(async (records) => {
      const rest = await knownRest(records, at);
      needOpen(rest, "a check tasting");
      const { tasterId } = body;
      if (tasterId !== null && (await records.find("taster", at.household, tasterId)) === null)
        unknownId("taster", tasterId, ["tasterId"]);
      const { nose = "", palate = "", finish = "" } = body.notes;
      const notes = { nose, palate, finish };
      const silent = SENSES.every((sense) => notes[sense].trim() === "");
      if (silent && body.strengths.every(({ strength }) => strength === null))
        refuse(422, {
          code: "check_says_nothing",
          path: ["notes"],
          limit: "a note or a strength",
          received: null,
          message: "a check tasting requires a note or a strength, got none",
        });
      needOnce(body.strengths);
      const before = await records.list("checkTasting", at.household, { where: { restId: rest.id } });
      if (before.length >= MOST_CHECKS)
        refuse(409, {
          code: "too_many_checks",
          path: ["rest"],
          limit: `at most ${MOST_CHECKS} check tastings`,
          received: before.length + 1,
          message: `a rest requires at most ${MOST_CHECKS} check tastings, got one more`,
        });
      const row: CheckTastingRow = {
        ...born(house, at.household),
        restId: rest.id,
        tasterId,
        at: momentOf(body.at, house.clock.now()),
        notes,
        strengths: body.strengths,
      };
      await records.insert("checkTasting", row);
      return restTold(records, rest);
    }),

  removeCheck: ({ house, at, query }) =>
    house.store.transaction(async (records) => {
      const rest = await knownRest(records, at);
      const id = at["check"] ?? "";
      const old = await records.find("checkTasting", at.household, id);
      if (old?.restId !== rest.id) unknownId("check", id, ["check"]);
      if (old.version !== query.version) staleEdit("check", query.version, old.version);
      await records.remove("checkTasting", at.household, id);
      return restTold(records, rest);
    }),
};

function needOnce(strengths: CheckTastingRow["strengths"]): void {
  const seen = new Set<string>();
  for (const [i, { section, attribute }] of strengths.entries()) {
    const place = `${section}/${attribute}`;
    if (seen.has(place))
      refuse(422, {
        code: "strength_named_twice",
        path: ["strengths", i],
        limit: "each attribute of a section once",
        received: place,
        message: `strengths requires each attribute of a section once, got ${place} twice`,
      });
    seen.add(place);
  }
}
