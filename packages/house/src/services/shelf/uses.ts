import type { SlotOf } from "../../protocol/index.ts";
import type { Records } from "../ports.ts";
import type { FlightRow, TransferRow } from "../rows.ts";

/** Where a whiskey is used, in words, by name. */
export async function usesOfWhiskey(
  records: Records,
  householdId: string,
  whiskeyId: string,
): Promise<string[]> {
  const bottles = await records.list("vessel", householdId, { where: { whiskeyId } });
  const poured = (await records.list("transfer", householdId)).some((t) => t.liquid?.liquidId === whiskeyId);
  const recipes = await usingRecipes(
    records,
    householdId,
    (of) => of.kind === "whiskey" && of.whiskeyId === whiskeyId,
    (targetWhiskeyId) => targetWhiskeyId === whiskeyId,
  );
  const flights = await usingFlights(records, householdId, `whiskey:${whiskeyId}`);
  const trials = await usingTrials(records, householdId, (id) => id === whiskeyId);
  return [
    ...bottles.map(({ label }) => `bottle ${label}`),
    ...(poured && bottles.length === 0 ? ["the ledger"] : []),
    ...recipes,
    ...flights,
    ...trials,
  ];
}

/** Where a batch is used besides its own vessel. */
export async function usesOfBatch(records: Records, householdId: string, batchId: string): Promise<string[]> {
  const recipes = await usingRecipes(
    records,
    householdId,
    (of) => of.kind === "batch" && of.batchId === batchId,
    () => false,
  );
  const rests = await records.list("rest", householdId, { where: { batchId } });
  return [
    ...recipes,
    ...rests.map(() => "its rest"),
    ...(await usingFlights(records, householdId, `batch:${batchId}`)),
    ...(await usingTrials(records, householdId, (id) => id === batchId)),
  ];
}

/** Flights that offer, target or poured from a name. */
async function usingFlights(
  records: Records,
  householdId: string,
  nameId: string,
  vesselId?: string,
): Promise<string[]> {
  const flights = await records.list("flight", householdId);
  const uses = (flight: FlightRow) =>
    flight.targetNameId === nameId ||
    flight.namesOnOffer.some((name) => name.nameId === nameId) ||
    (vesselId !== undefined &&
      (flight.marks.some((mark) => mark.vesselId === vesselId) ||
        flight.holds.some((hold) => hold.vesselId === vesselId)));
  return flights.filter(uses).map(({ name }) => `flight ${name}`);
}

/** Sets of trials that are planned of it, or whose flight it is to stand in. */
export async function usingTrials(
  records: Records,
  householdId: string,
  isIt: (id: string) => boolean,
): Promise<string[]> {
  const sets = await records.list("trialSet", householdId);
  return sets
    .filter(
      ({ asked: { parts, flight } }) =>
        parts.some(({ of }) => isIt(of.kind === "whiskey" ? of.whiskeyId : of.batchId)) ||
        (flight?.targetNameId !== undefined &&
          flight.targetNameId !== null &&
          isIt(flight.targetNameId.slice(flight.targetNameId.indexOf(":") + 1))) ||
        (flight?.glasses ?? []).some(({ of }) => "vesselId" in of && isIt(of.vesselId)),
    )
    .map(({ name }) => `trials ${name}`);
}

async function usingRecipes(
  records: Records,
  householdId: string,
  inSlot: (of: SlotOf) => boolean,
  asTarget: (targetWhiskeyId: string | null) => boolean,
): Promise<string[]> {
  const versions = await records.list("recipeVersion", householdId);
  const slotted = new Set(
    versions.filter(({ body }) => body.slots.some(({ of }) => inSlot(of))).map(({ recipeId }) => recipeId),
  );
  const recipes = await records.list("recipe", householdId);
  return recipes
    .filter((recipe) => slotted.has(recipe.id) || asTarget(recipe.targetWhiskeyId))
    .map(({ name }) => `recipe ${name}`);
}

/** Where a vessel is used, and the undone transfers that still name it. */
export async function usesOfVessel(
  records: Records,
  householdId: string,
  vesselId: string,
): Promise<{ readonly uses: string[]; readonly undone: readonly TransferRow[] }> {
  const touching = (await records.list("transfer", householdId)).filter(({ from, to }) =>
    [from, to].some((side) => side.kind === "vessel" && side.vesselId === vesselId),
  );
  const undone = touching.filter((transfer) => transfer.undoneAt !== null);
  const live = touching.length - undone.length;
  const batches = await records.list("batch", householdId, { where: { vesselId } });
  const kept = await records.list("rest", householdId, { where: { sampleVesselId: vesselId } });
  return {
    uses: [
      ...(live === 0 ? [] : [live === 1 ? "1 transfer" : `${live} transfers`]),
      ...batches.map(({ name }) => `batch ${name}`),
      ...kept.map(() => "a rest, whose sample it keeps"),
      ...(await usingFlights(records, householdId, `vessel:${vesselId}`, vesselId)),
      ...(await usingTrials(records, householdId, (id) => id === vesselId)),
    ],
    undone,
  };
}
