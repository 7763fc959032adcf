import { born } from "../birth.ts";
import type { Entry, EntryDraft } from "../../protocol/index.ts";
import { changed } from "./flight-rows.ts";
import { newId } from "../ids.ts";
import type { House, Records } from "../ports.ts";
import { refuse } from "../refuse.ts";
import { chained } from "./promise.ts";
import type { EntryRow, FlightRow, SheetRow } from "../rows.ts";

type Written = EntryRow["written"];

interface Kept {
  readonly sheet: SheetRow;
  readonly entry: EntryRow;
}

/** What is said of a sheet's entry from the body of a request; what was not sent is not in it. */
export function writtenIn({
  notes,
  guesses,
  ranking,
  answers,
  strengths,
  typedBy,
}: Omit<EntryDraft, "key" | "after">): Written {
  return {
    ...(notes === undefined ? {} : { notes }),
    ...(guesses === undefined ? {} : { guesses }),
    ...(ranking === undefined ? {} : { ranking }),
    ...(answers === undefined ? {} : { answers }),
    ...(strengths === undefined ? {} : { strengths }),
    ...(typedBy === undefined ? {} : { typedBy }),
  };
}

/** E1, E3: the next entry of a sheet and the sheet as it is after it, in one transaction. */
export async function keepEntry(
  records: Records,
  house: House,
  flight: FlightRow,
  sheet: SheetRow,
  entry: { readonly kind: Entry["kind"]; readonly key?: string | undefined; readonly written: Written },
  fields: Partial<SheetRow>,
): Promise<Kept> {
  const number = sheet.entries + 1;
  const last = await lastOf(records, sheet);
  const head = born(house, sheet.householdId);
  // A clock that was set back must not make an entry older than the one before it.
  const createdAt = last !== null && last.createdAt > head.createdAt ? last.createdAt : head.createdAt;
  const { kind, written } = entry;
  const row: EntryRow = {
    ...head,
    createdAt,
    flightId: sheet.flightId,
    sheetId: sheet.id,
    number,
    key: entry.key ?? newId(house),
    kind,
    written,
    hash: await chained(house, flight, sheet, last, { kind, written, createdAt }),
  };
  const next = changed(sheet, house.clock.now(), { ...fields, entries: number });
  if (!(await records.replace("sheet", next))) entryConflict(sheet.entries, next.entries);
  await records.insert("entry", row);
  return { sheet: next, entry: row };
}

/** E2: the entry that a device has sent before under this key; refused if it said something else. */
export async function sentBefore(
  records: Records,
  sheet: SheetRow,
  key: string | undefined,
  { kind, written }: { readonly kind: Entry["kind"]; readonly written: Written },
): Promise<EntryRow | null> {
  if (key === undefined) return null;
  const [row] = await records.list("entry", sheet.householdId, { where: { sheetId: sheet.id, key } });
  if (!row) return null;
  if (row.kind === kind && JSON.stringify(row.written) === JSON.stringify(written)) return row;
  refuse(409, {
    code: "key_reused",
    path: ["key"],
    limit: "a key of its own for each entry",
    received: key,
    message: `an entry requires a key of its own, got that of entry ${row.number}, which says something else`,
  });
}

/** E4: told, never merged. */
export function needAfter(sheet: SheetRow, after: number): void {
  if (sheet.entries !== after) entryConflict(after, sheet.entries);
}

function entryConflict(sent: number, stored: number): never {
  refuse(409, {
    code: "entry_conflict",
    path: ["after"],
    limit: `entry ${stored}`,
    received: sent,
    message: `an entry requires to come after the sheet's last entry ${stored}, got one after ${sent}: the sheet was written on another device`,
  });
}

export const shownEntry = ({ number, key, kind, createdAt, written, hash }: EntryRow): Entry => ({
  number,
  key,
  kind: kind as Entry["kind"],
  at: createdAt,
  ...(written.notes === undefined ? {} : { notes: [...written.notes] }),
  ...(written.guesses === undefined ? {} : { guesses: [...written.guesses] }),
  ...(written.ranking === undefined ? {} : { ranking: written.ranking?.map((tie) => [...tie]) ?? null }),
  ...(written.answers === undefined ? {} : { answers: structuredClone([...written.answers]) }),
  ...(written.strengths === undefined ? {} : { strengths: [...written.strengths] }),
  ...(written.typedBy === undefined ? {} : { typedBy: written.typedBy }),
  hash,
});

/** Of every sheet of a flight, in no order. */
export const entriesOfFlight = (records: Records, flight: FlightRow): Promise<readonly EntryRow[]> =>
  records.list("entry", flight.householdId, { where: { flightId: flight.id } });

async function lastOf(records: Records, sheet: SheetRow): Promise<EntryRow | null> {
  if (sheet.entries === 0) return null;
  const where = { sheetId: sheet.id, number: sheet.entries };
  const [row] = await records.list("entry", sheet.householdId, { where });
  return row ?? null;
}

export async function entriesOf(records: Records, sheet: SheetRow): Promise<readonly EntryRow[]> {
  const rows = await records.list("entry", sheet.householdId, { where: { sheetId: sheet.id } });
  return rows.toSorted((a, b) => a.number - b.number);
}
