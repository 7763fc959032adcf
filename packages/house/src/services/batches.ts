import { contentsOfVessel, TOLERANCE, volumeOf } from "@partsproof/core/ledger";
import type { Batch, BodyRead } from "../protocol/index.ts";
import { type BatchPast, batchNow, batchPasts, NO_PAST } from "./batch-past.ts";
import { born, edited } from "./birth.ts";
import type { Handlers } from "./handler.ts";
import { knownHousehold } from "./known.ts";
import { pageOf } from "./pages.ts";
import type { House, Records } from "./ports.ts";
import { knownRecipe, versionOf } from "./recipes.ts";
import { refuse, staleEdit, unknownId } from "./refuse.ts";
import type { BatchRow, RecipeRow, RecipeVersionRow, VesselRow } from "./rows.ts";
import { liquidIn, type Shelf, shelfState } from "./shelf.ts";
import { shownContents } from "./shelf-contents.ts";
import { type Entry, post } from "./shelf-post.ts";
import { refuseOverflow } from "./shelf-refusal.ts";

export const batchHandlers: Handlers<"listBatches" | "addBatch" | "getBatch" | "editBatch"> = {
  listBatches: ({ house, at, query }) =>
    house.store.transaction(async (records) => {
      await knownHousehold(records, at.household);
      const show = await batchShower(records, house, at.household);
      return pageOf(query, (q) => records.list("batch", at.household, { ...q, newestFirst: true }), show);
    }),

  /** R4: its vessel if new, all pours in order and itself, or none of it. */
  addBatch: ({ house, at, body }) =>
    house.store.transaction(async (records) => {
      await knownHousehold(records, at.household);
      const recipe = await knownRecipe(records, at.household, body.recipeId, ["recipeId"]);
      const version = await knownVersion(records, recipe, body.recipeNumber);
      const head = born(house, at.household);
      const vessel = await vesselFor(records, house, at.household, body.vessel, head.id);
      const batch: BatchRow = {
        ...head,
        name: body.name,
        recipeId: recipe.id,
        recipeNumber: version.number,
        vesselId: vessel.id,
        madeAt: head.createdAt,
        restDays: body.restDays === undefined ? version.body.restDays : body.restDays,
        finishedAt: null,
        note: body.note,
      };
      await records.insert("batch", batch);
      await pour(records, house, batch, vessel, body.pours);
      return (await batchShower(records, house, at.household))(batch);
    }),

  getBatch: ({ house, at }) =>
    house.store.transaction(async (records) => {
      const id = at["batch"] ?? "";
      const row = (await records.find("batch", at.household, id)) ?? unknownId("batch", id, ["batch"]);
      return (await batchShower(records, house, at.household))(row);
    }),

  editBatch: ({ house, at, body }) =>
    house.store.transaction(async (records) => {
      const id = at["batch"] ?? "";
      const old = (await records.find("batch", at.household, id)) ?? unknownId("batch", id, ["batch"]);
      const head = edited(house, "batch", old, body.version);
      const finishedAt = body.finished ? (old.finishedAt ?? head.updatedAt) : null;
      const row: BatchRow = {
        ...head,
        name: body.name ?? old.name,
        restDays: body.restDays === undefined ? old.restDays : body.restDays,
        finishedAt: body.finished === undefined ? old.finishedAt : finishedAt,
        note: body.note ?? old.note,
      };
      if (!(await records.replace("batch", row))) staleEdit("batch", body.version, row.version);
      return (await batchShower(records, house, at.household))(row);
    }),
};

/** The version asked, or the latest; 404 where the recipe has none of that number. */
export async function knownVersion(
  records: Records,
  recipe: RecipeRow,
  number = recipe.latestNumber,
): Promise<RecipeVersionRow> {
  return (
    (await versionOf(records, recipe, number)) ??
    refuse(404, {
      code: "unknown_recipe_version",
      path: ["recipeNumber"],
      limit: `a version of ${recipe.name}, 1 to ${recipe.latestNumber}`,
      received: number,
      message: `recipe ${recipe.name} requires a version from 1 to ${recipe.latestNumber}, got ${number}`,
    })
  );
}

/** R6: the batch's vessel, new or empty, with the batch's id on it. */
async function vesselFor(
  records: Records,
  house: House,
  householdId: string,
  asked: BodyRead<"addBatch">["vessel"],
  batchId: string,
): Promise<VesselRow> {
  if (asked.kind === "new") {
    const row: VesselRow = {
      ...born(house, householdId),
      kind: "blending bottle",
      label: asked.label,
      capacityMl: asked.capacityMl,
      whiskeyId: null,
      batchId,
      priceMinor: null,
      openedAt: null,
    };
    await records.insert("vessel", row);
    return row;
  }
  const id = asked.vesselId;
  const old =
    (await records.find("vessel", householdId, id)) ?? unknownId("vessel", id, ["vessel", "vesselId"]);
  const { state } = await shelfState(records, householdId);
  const heldMl = volumeOf(contentsOfVessel(state, id));
  if (heldMl > 0) {
    refuse(409, {
      code: "vessel_not_empty",
      path: ["vessel", "vesselId"],
      limit: "an empty vessel",
      received: heldMl,
      message: `a batch requires an empty vessel, got ${old.label} with ${heldMl.toFixed(1)} mL in it`,
    });
  }
  const row: VesselRow = { ...edited(house, "vessel", old, old.version), batchId };
  if (!(await records.replace("vessel", row))) staleEdit("vessel", old.version, row.version);
  return row;
}

/** Posts the pours, and measures the whole against the vessel, so that a batch too big is told with its full volume. */
async function pour(
  records: Records,
  house: House,
  batch: BatchRow,
  vessel: VesselRow,
  pours: BodyRead<"addBatch">["pours"],
): Promise<void> {
  const shelf = await shelfState(records, batch.householdId);
  const entries: Entry[] = [];
  for (const [i, { from, amount }] of pours.entries()) {
    if (from.kind === "vessel" && !shelf.vessels.has(from.vesselId))
      unknownId("vessel", from.vesselId, ["pours", i, "from", "vesselId"]);
    entries.push({
      from: from.kind === "vessel" ? from : { kind: "outside", name: "tap" },
      to: { kind: "vessel", vesselId: vessel.id },
      amount,
      liquid: from.kind === "vessel" ? null : liquidIn(null, amount, 0),
      batchId: batch.id,
      path: ["pours", i, from.kind === "vessel" && from.vesselId === vessel.id ? "from" : "amount"],
    });
  }
  const roomy: Shelf = {
    ...shelf,
    state: {
      ...shelf.state,
      vessels: new Map(shelf.state.vessels).set(vessel.id, { id: vessel.id, capacityMl: Number.MAX_VALUE }),
    },
  };
  const after = await post(records, house, batch.householdId, entries, { shelf: roomy });
  const finalMl = volumeOf(contentsOfVessel(after.shelf.state, vessel.id));
  if (finalMl > vessel.capacityMl * (1 + TOLERANCE)) refuseOverflow(vessel, finalMl, ["vessel"]);
}

/** Shows batches of one household as of now (R5). */
async function batchShower(
  records: Records,
  house: Pick<House, "clock">,
  householdId: string,
): Promise<(row: BatchRow) => Batch> {
  const shelf = await shelfState(records, householdId);
  const recipes = new Map((await records.list("recipe", householdId)).map(({ id, name }) => [id, name]));
  const pasts = batchPasts(shelf);
  const now = house.clock.now();
  return (row) => shownBatch(shelf, row, pasts.get(row.id) ?? NO_PAST, recipes.get(row.recipeId) ?? "", now);
}

function shownBatch(
  shelf: Shelf,
  row: BatchRow,
  { poured, made }: BatchPast,
  recipeName: string,
  now: Date,
): Batch {
  const { id, version, name, recipeId, recipeNumber, vesselId, madeAt, restDays, note } = row;
  return {
    id,
    version,
    name,
    recipeId,
    recipeName,
    recipeNumber,
    vesselId,
    vesselLabel: shelf.vessels.get(vesselId)?.label ?? "",
    madeAt,
    restDays,
    restDueAt: restDue(row)?.toISOString() ?? null,
    state: batchState(row, now),
    note,
    poured,
    made: shownContents(shelf, made),
    now: shownContents(shelf, batchNow(shelf, row)),
  };
}

const DAY_MS = 86_400_000;

/** When its rest ends; null where none was asked. */
export function restDue({ madeAt, restDays }: BatchRow): Date | null {
  return restDays === null ? null : new Date(Date.parse(madeAt) + restDays * DAY_MS);
}

export function batchState(row: BatchRow, now: Date): Batch["state"] {
  if (row.finishedAt !== null) return "finished";
  return (restDue(row)?.getTime() ?? -Infinity) > now.getTime() ? "resting" : "rested";
}
