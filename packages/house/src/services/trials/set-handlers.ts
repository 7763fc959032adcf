import { born, edited } from "../birth.ts";
import type { Handlers } from "../handler.ts";
import { knownHousehold } from "../known.ts";
import { pageOf } from "../pages.ts";
import type { House, Records } from "../ports.ts";
import { refuse, staleEdit, unknownId } from "../refuse.ts";
import type { TrialSetRow } from "../rows.ts";
import { shelfState, undo, usingTrials } from "../shelf/index.ts";
import { planHere } from "./set-plan.ts";
import { pourSet } from "./set-pour.ts";
import { trialSetShower } from "./set-shown.ts";

type Routes =
  | "listTrialSets"
  | "addTrialSet"
  | "getTrialSet"
  | "removeTrialSet"
  | "pourTrials"
  | "undoTrials";

export const trialSetHandlers: Handlers<Routes> = {
  listTrialSets: ({ house, at, query }) =>
    house.store.transaction(async (records) => {
      await knownHousehold(records, at.household);
      const show = await trialSetShower(records, house, at.household);
      return pageOf(query, (q) => records.list("trialSet", at.household, { ...q, newestFirst: true }), show);
    }),

  addTrialSet: ({ house, at, body }) =>
    house.store.transaction(async (records) => {
      await knownHousehold(records, at.household);
      for (const [i, { of }] of body.parts.entries()) {
        const id = of.kind === "whiskey" ? of.whiskeyId : of.batchId;
        if (!(await records.find(of.kind, at.household, id)))
          unknownId(of.kind, id, ["parts", i, "of", `${of.kind}Id`]);
      }
      for (const [i, { of }] of (body.flight?.glasses ?? []).entries())
        if ("vesselId" in of && !(await records.find("vessel", at.household, of.vesselId)))
          unknownId("vessel", of.vesselId, ["flight", "glasses", i, "of", "vesselId"]);
      const { name, note, ...asked } = body;
      const row: TrialSetRow = {
        ...born(house, at.household),
        name,
        asked,
        plan: planHere(await shelfState(records, at.household), asked),
        made: [],
        madeAt: null,
        note,
      };
      await records.insert("trialSet", row);
      return (await trialSetShower(records, house, at.household))(row);
    }),

  getTrialSet: ({ house, at }) =>
    house.store.transaction(async (records) => {
      const row = await knownSet(records, at);
      return (await trialSetShower(records, house, at.household))(row);
    }),

  removeTrialSet: ({ house, at, query }) =>
    house.store.transaction(async (records) => {
      const old = await knownSet(records, at);
      if (old.version !== query.version) staleEdit("set of trials", query.version, old.version);
      if (old.made.length > 0)
        refuse(409, {
          code: "trials_poured",
          path: ["trials"],
          limit: "a set of which nothing is poured",
          received: old.made.length,
          message: `removing a set of trials requires one of which nothing is poured, got ${old.made.length} poured: undo the pouring first`,
        });
      await records.remove("trialSet", at.household, old.id);
      return undefined;
    }),

  pourTrials: ({ house, at, body }) =>
    house.store.transaction(async (records) => {
      const old = await knownSet(records, at);
      if (old.version !== body.version) staleEdit("set of trials", body.version, old.version);
      const row = await pourSet(records, house, old, body);
      if (!(await records.replace("trialSet", row))) staleEdit("set of trials", body.version, row.version);
      return (await trialSetShower(records, house, at.household))(row);
    }),

  /** B4: what was poured goes back, the vials go; nothing of it where one of them was poured from since. */
  undoTrials: ({ house, at }) =>
    house.store.transaction(async (records) => {
      const old = await knownSet(records, at);
      if (old.made.length === 0)
        refuse(409, {
          code: "nothing_to_undo",
          path: ["trials"],
          limit: "a set of which something is poured",
          received: 0,
          message: "undoing a pouring requires a set of which something is poured, got none",
        });
      const vials = new Set(old.made.map(({ vesselId }) => vesselId));
      const planned = await usingTrials(records, at.household, (id) => vials.has(id));
      if (planned.length > 0)
        refuse(409, {
          code: "vial_planned",
          path: ["trials"],
          limit: "vials that stand in no planned flight of other trials",
          received: planned,
          message: `undoing a pouring requires vials that stand in no planned flight of other trials, got ${planned.join(", ")}`,
        });
      await takeBack(records, house, old);
      const row: TrialSetRow = {
        ...edited(house, "set of trials", old, old.version),
        made: [],
        madeAt: null,
      };
      if (!(await records.replace("trialSet", row))) staleEdit("set of trials", old.version, row.version);
      return (await trialSetShower(records, house, at.household))(row);
    }),
};

async function takeBack(records: Records, house: House, { householdId, made }: TrialSetRow): Promise<void> {
  const vials = new Set(made.map(({ vesselId }) => vesselId));
  const into = (await records.list("transfer", householdId))
    .filter(({ to, undoneAt }) => to.kind === "vessel" && vials.has(to.vesselId) && undoneAt === null)
    .toSorted((a, b) => b.seq - a.seq);
  for (const row of into) await undo(records, house, row);
  // What was undone counts for nothing and goes with the vial it names, as when a vessel is removed.
  for (const row of await records.list("transfer", householdId))
    if (
      row.undoneAt !== null &&
      [row.from, row.to].some((side) => side.kind === "vessel" && vials.has(side.vesselId))
    )
      await records.remove("transfer", householdId, row.id);
  for (const id of vials) await records.remove("vessel", householdId, id);
}

async function knownSet(
  records: Records,
  at: Readonly<Record<string, string>> & { readonly household: string },
): Promise<TrialSetRow> {
  const id = at["trials"] ?? "";
  return (await records.find("trialSet", at.household, id)) ?? unknownId("set of trials", id, ["trials"]);
}
