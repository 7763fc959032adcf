import { describeContents } from "@partsproof/core/ledger";
import type { BodyRead } from "../../protocol/index.ts";
import { born } from "../birth.ts";
import type { Handlers } from "../handler.ts";
import type { House, Records } from "../ports.ts";
import { refuse, unknownId } from "../refuse.ts";
import type { BatchRow, RestRow, VesselRow } from "../rows.ts";
import { batchNow, post, type Shelf, shelfState } from "../shelf/index.ts";
import { momentOf } from "./known-rest.ts";
import { restTold } from "./read-rests.ts";

export const beginHandlers: Handlers<"beginRest"> = {
  /** O1, O2: the rest and its kept sample, or neither. */
  beginRest: ({ house, at, body }) =>
    house.store.transaction(async (records) => {
      const id = at["batch"] ?? "";
      const batch = (await records.find("batch", at.household, id)) ?? unknownId("batch", id, ["batch"]);
      const shelf = await shelfState(records, at.household);
      needRoom(batch, shelf, await records.list("rest", at.household, { where: { batchId: batch.id } }));
      needRule(body);
      const sampleVesselId =
        body.sample === null ? null : await keepSample(records, house, batch, body.sample);
      const rest: RestRow = {
        ...born(house, at.household),
        batchId: batch.id,
        kind: body.kind,
        beganAt: momentOf(body.at, house.clock.now()),
        pull: body.pull,
        leadsAt: body.leadsAt,
        falling: body.falling,
        celsius: body.celsius,
        abv20: describeContents(batchNow(shelf, batch), shelf.facts).abv20,
        flightOn: body.flightOn,
        note: body.note,
        sampleVesselId,
        endedAt: null,
        lossMl: null,
      };
      await records.insert("rest", rest);
      return restTold(records, rest);
    }),
};

/** O1: one rest at a time, of a batch that is there. */
function needRoom(batch: BatchRow, shelf: Shelf, rests: readonly RestRow[]): void {
  const open = rests.find(({ endedAt }) => endedAt === null);
  if (open)
    refuse(409, {
      code: "rest_goes_on",
      path: ["batch"],
      limit: "a batch without a rest that goes on",
      received: open.id,
      message: `a rest requires a batch without one that goes on, got ${batch.name}, which rests since ${open.beganAt}: end that one first`,
    });
  if (batch.finishedAt !== null || batchNow(shelf, batch).size === 0)
    refuse(409, {
      code: "batch_gone",
      path: ["batch"],
      limit: "a batch with something in its vessel that is not finished",
      received: batch.finishedAt ?? 0,
      message: `a rest requires a batch with something in its vessel that is not finished, got ${batch.name}`,
    });
}

/** O1: what the rule's two levels must keep to; on glass there is nothing to pull. */
export function needRule({
  kind,
  pull,
  leadsAt,
}: Pick<BodyRead<"beginRest">, "kind" | "pull" | "leadsAt">): void {
  if (kind === "glass" && pull !== null)
    refuse(422, {
      code: "nothing_to_pull",
      path: ["pull"],
      limit: "no rule on glass",
      received: pull.attribute,
      message: "a rest on glass requires no rule to pull by, got one",
    });
  if (leadsAt === null) return;
  if (pull !== null && leadsAt >= pull.level) return;
  const limit = pull === null ? "a rule to pull by" : `at least ${pull.level}, the pull level`;
  refuse(422, {
    code: "leads_below_pull",
    path: ["leadsAt"],
    limit,
    received: leadsAt,
    message: `the level from which the oak leads requires ${limit}, got ${leadsAt}`,
  });
}

/** O2: out of the batch's vessel into a vial of its own. */
async function keepSample(
  records: Records,
  house: House,
  batch: BatchRow,
  { label, capacityMl, ml }: NonNullable<BodyRead<"beginRest">["sample"]>,
): Promise<string> {
  const vial: VesselRow = {
    ...born(house, batch.householdId),
    kind: "vial",
    label,
    capacityMl,
    whiskeyId: null,
    batchId: null,
    priceMinor: null,
    openedAt: null,
  };
  await records.insert("vessel", vial);
  await post(records, house, batch.householdId, [
    {
      from: { kind: "vessel", vesselId: batch.vesselId },
      to: { kind: "vessel", vesselId: vial.id },
      amount: { kind: "volume", ml },
      liquid: null,
      note: `kept from ${batch.name}, before its rest`,
      path: ["sample", "ml"],
    },
  ]);
  return vial.id;
}
