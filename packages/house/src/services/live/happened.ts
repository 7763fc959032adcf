import type { LiveEvent, LiveKind } from "../../protocol/index.ts";
import { born } from "../birth.ts";
import type { House, Reads, Records } from "../ports.ts";
import type { FlightRow, LiveEventRow } from "../rows.ts";

/** How many events of a flight are kept for streams that go on from an earlier one. */
const KEPT = 500;
const SWEEP_EVERY = 100;

interface Which {
  readonly sheetId?: string;
  readonly number?: number | null;
}

/** L1: the next event of a flight, in the transaction of what it tells. */
export async function happened(
  records: Records,
  house: Pick<House, "clock" | "random">,
  { householdId, id: flightId }: Pick<FlightRow, "householdId" | "id">,
  kind: LiveKind,
  { sheetId, number }: Which = {},
): Promise<void> {
  const head = born(house, householdId);
  const count = await records.find("liveCount", householdId, flightId);
  const seq = (count?.seq ?? 0) + 1;
  if (count === null) await records.insert("liveCount", { ...head, id: flightId, seq });
  else
    await records.replace("liveCount", {
      ...count,
      version: count.version + 1,
      updatedAt: head.createdAt,
      seq,
    });
  await records.insert("liveEvent", {
    ...head,
    flightId,
    seq,
    kind,
    sheetId: sheetId ?? null,
    number: number ?? null,
  });
  if (seq % SWEEP_EVERY === 0) await sweep(records, householdId, flightId, seq - KEPT);
}

async function sweep(records: Records, householdId: string, flightId: string, upTo: number): Promise<void> {
  for (const { id, seq } of await records.list("liveEvent", householdId, { where: { flightId } })) {
    if (seq <= upTo) await records.remove("liveEvent", householdId, id);
  }
}

/** The number of a flight's last event, 0 for none. */
export async function lastSeq(records: Reads, householdId: string, flightId: string): Promise<number> {
  return (await records.find("liveCount", householdId, flightId))?.seq ?? 0;
}

/** What is kept of a flight's events, in order. */
export async function eventsOf(
  records: Reads,
  householdId: string,
  flightId: string,
): Promise<readonly LiveEvent[]> {
  const rows = await records.list("liveEvent", householdId, { where: { flightId } });
  return rows.map(shown).toSorted((a, b) => a.seq - b.seq);
}

const shown = ({ seq, kind, createdAt, sheetId, number }: LiveEventRow): LiveEvent => ({
  kind: "event",
  seq,
  what: kind as LiveKind,
  at: createdAt,
  sheetId,
  number,
});
