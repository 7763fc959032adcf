import type { NextThing } from "../../protocol/index.ts";
import { batchNow, type Shelf, shelfState, volumeIn } from "../shelf/index.ts";
import { batchState, restDue } from "../batches/index.ts";
import type { Handlers } from "../handler.ts";
import { knownHousehold } from "../known.ts";
import { nextOfFlight } from "./next-flights.ts";
import { nextOfRest } from "./next-rests.ts";
import { readerOf, wholeRests } from "../resting/index.ts";
import type { BatchRow, VesselRow } from "../rows.ts";

export const nextHandlers: Handlers<"next"> = {
  /** What is due, oldest first; then what will be, soonest first; then what the household has none of, or little. */
  next: async ({ house, at }) => {
    const now = house.clock.now();
    const found = await house.store.transaction(async (records) => {
      await knownHousehold(records, at.household);
      const shelf = await shelfState(records, at.household);
      const sheets = await records.list("sheet", at.household);
      const tasters = new Map((await records.list("taster", at.household)).map((t) => [t.id, t.name]));
      const dated = [
        ...[...shelf.batches.values()].flatMap((batch) => nextOfBatch(shelf, batch, now)),
        ...shelf.sealedFlights.flatMap((flight) =>
          nextOfFlight(
            flight,
            sheets.filter(({ flightId }) => flightId === flight.id),
            (id) => tasters.get(id) ?? "",
          ),
        ),
      ];
      const recipes = (await records.list("recipe", at.household, { limit: 1 })).length;
      const lows = [...shelf.vessels.values()].flatMap((vessel) => nextOfBottle(shelf, vessel));
      const rests = (await wholeRests(records, at.household)).filter(
        ({ batch }) => batchState(batch, now) !== "finished" && batchNow(shelf, batch).size > 0,
      );
      const read = await readerOf(records, at.household);
      return { dated, undated: [...missing(shelf, recipes), ...lows], rests, read };
    });
    const dated = [
      ...found.dated,
      ...found.rests.flatMap((whole) => nextOfRest(whole, found.read, now)),
    ].toSorted((a, b) => ((a.at ?? "") < (b.at ?? "") ? -1 : 1));
    return { items: [...dated, ...found.undated] };
  },
};

const days = (n: number): string => (n === 1 ? "1 day" : `${n} days`);

function nextOfBatch(shelf: Shelf, batch: BatchRow, now: Date): NextThing[] {
  const { id, name, madeAt, restDays } = batch;
  const state = batchState(batch, now);
  if (state === "finished" || batchNow(shelf, batch).size === 0) return [];
  const subject = { kind: "batch" as const, id };
  const due = restDue(batch);
  if (state === "resting" && due !== null && restDays !== null) {
    const text = `${name} rests its ${days(restDays)}`;
    return [{ kind: "batch resting", text, at: due.toISOString(), subject }];
  }
  const text = restDays ? `${name} has rested its ${days(restDays)}` : `${name} is made and asks for no rest`;
  return [{ kind: "batch rested", text, at: due?.toISOString() ?? madeAt, subject }];
}

/** What a household without it needs first. */
function missing(shelf: Shelf, recipes: number): NextThing[] {
  const bottled = [...shelf.vessels.values()].some(
    ({ kind, id }) => kind === "bottle" && volumeIn(shelf, id) > 0,
  );
  if (!bottled)
    return [
      {
        kind: "empty shelf",
        text: "Put a bottle on the shelf",
        at: null,
        subject: { kind: "shelf", id: null },
      },
    ];
  if (recipes === 0)
    return [{ kind: "no recipe", text: "Write a recipe", at: null, subject: { kind: "recipe", id: null } }];
  if (shelf.batches.size === 0)
    return [
      { kind: "no batch", text: "Make a batch of a recipe", at: null, subject: { kind: "batch", id: null } },
    ];
  return [];
}

/** A bottle with less than this share left is low. */
const LOW = 0.15;

function nextOfBottle(shelf: Shelf, { id, kind, label, capacityMl, openedAt }: VesselRow): NextThing[] {
  const left = volumeIn(shelf, id);
  if (kind !== "bottle" || openedAt === null || left === 0 || left >= LOW * capacityMl) return [];
  const text = `${label}: ${left.toFixed(0)} mL left`;
  return [{ kind: "bottle low", text, at: null, subject: { kind: "vessel", id } }];
}
