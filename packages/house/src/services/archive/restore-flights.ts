import { freshIds, type NewIds, renewed } from "./archive-ids.ts";
import { type ArchiveRows, SealedKeys, SealedSheets } from "./archive-rows.ts";
import { archiveWrong } from "./archive-wrong.ts";
import { keyFor, sealedFor } from "./export.ts";
import { keyOfText, wrappingKey } from "./wrapping-key.ts";
import type { House } from "../ports.ts";
import type { EntryRow, FlightKey, FlightKeyRow, FlightRow, SheetRow, TaughtWordRow } from "../rows.ts";
import { seal, unseal } from "../flights/index.ts";

type Bare<R> = Omit<R, "householdId">;
export interface RestoredFlights {
  readonly flights: readonly Bare<FlightRow>[];
  readonly sheets: readonly Bare<SheetRow>[];
  readonly keys: readonly Bare<FlightKeyRow>[];
  readonly entries: readonly Bare<EntryRow>[];
  readonly words: readonly Bare<TaughtWordRow>[];
}

interface Revived {
  readonly holds: FlightRow["holds"];
  readonly key: Bare<FlightKeyRow> | null;
}
/** Wrapping keys by flight. */
type Recovery = Readonly<Record<string, string>>;

/** No hash of any token: nothing fits it. */
const NO_TOKEN = "";
const CALLED_OFF = " (called off: copied before its reveal)";
const NAME_CHARACTERS = 120;

/**
 * F15: a flight that the file does not show as revealed is called off in the copy, and so is one that comes with
 * sealed sheets whatever the file says: sheets that were sealed stay shut to all but their tokens. What another
 * house sealed cannot be opened and is left out.
 */
export async function restoredFlights(
  house: House,
  rows: ArchiveRows,
  ids: NewIds,
  same: boolean,
  recovery: Recovery = {},
): Promise<RestoredFlights> {
  const revived = await recovered(house, rows, same, recovery);
  const insides = await unsealed(house, rows, ids, same, recovery);
  const sealed = new Set(rows.sealedSheets.map(({ flightId }) => flightId));
  const isRevealed = (row: { readonly id: string; readonly state: string }) =>
    row.state === "revealed" && !sealed.has(row.id);
  const revealed = new Set(rows.flight.filter(isRevealed).map(({ id }) => id));
  const needRevealed = (flightId: string, path: readonly (string | number)[]) => {
    if (!revealed.has(flightId))
      archiveWrong([...path, "flightId"], "a flight of the file that is revealed", flightId);
  };
  return {
    flights: rows.flight.map((row, i) => ({
      ...renewed(ids, "flight", row, ["flight", i]),
      name:
        revealed.has(row.id) || revived.has(row.id) || row.state === "called off"
          ? row.name
          : calledOff(row.name),
      state: revealed.has(row.id) ? "revealed" : revived.has(row.id) ? row.state : "called off",
      holds: revived.get(row.id)?.holds ?? [],
      // The promise was made of the first household's ids: of a copy's it says nothing.
      ...(same && (revealed.has(row.id) || revived.has(row.id) || row.state === "called off")
        ? {}
        : { commitment: null, closing: null }),
      hostTokenHash: insides.get(row.id)?.hostTokenHash ?? NO_TOKEN,
      pourerTokenHash: insides.get(row.id)?.pourerTokenHash ?? null,
    })),
    sheets: [
      ...rows.sheet.map((row, i) => {
        needRevealed(row.flightId, ["sheet", i]);
        return { ...renewed(ids, "sheet", row, ["sheet", i]), tokenHash: null };
      }),
      ...[...insides.values()].flatMap(({ sheets }) => sheets),
    ],
    keys: [
      ...rows.flightKey.map((row, i) => {
        needRevealed(row.flightId, ["flightKey", i]);
        const { opened, ...key } = renewed(ids, "flightKey", row, ["flightKey", i]);
        return { ...key, sealed: null, opened: same ? (opened as FlightKey) : restoredKey(opened) };
      }),
      ...[...revived.values()].flatMap(({ key }) => (key === null ? [] : [key])),
    ],
    entries: [
      ...rows.entry.map((row, i) => {
        needRevealed(row.flightId, ["entry", i]);
        return restoredEntry(renewed(ids, "entry", row, ["entry", i]), same);
      }),
      ...[...insides.values()].flatMap(({ entries }) => entries.map((entry) => restoredEntry(entry, same))),
    ],
    words: [
      ...rows.taughtWord.map((row, i) => {
        if (row.flightId !== null) needRevealed(row.flightId, ["taughtWord", i]);
        return renewed(ids, "taughtWord", row, ["taughtWord", i]);
      }),
      ...[...insides.values()].flatMap(({ words }) => words),
    ],
  };
}

/** Fields that were not written are left out, and the digest is of the first household's entry, which a copy's is not. */
function restoredEntry(
  { written, hash, ...row }: ArchiveRows["entry"][number],
  same: boolean,
): Bare<EntryRow> {
  const { notes, guesses, ranking, answers, strengths, typedBy } = written;
  return {
    ...row,
    hash: same ? hash : null,
    written: {
      ...(notes === undefined ? {} : { notes }),
      ...(guesses === undefined ? {} : { guesses }),
      ...(ranking === undefined ? {} : { ranking }),
      ...(answers === undefined ? {} : { answers }),
      ...(strengths === undefined ? {} : { strengths }),
      ...(typedBy === undefined ? {} : { typedBy }),
    },
  };
}

/** Without what checks the promise, which was about the first household's ids. */
function restoredKey({
  glasses,
  codes,
  expected,
  said,
}: ArchiveRows["flightKey"][number]["opened"]): FlightKey {
  return {
    glasses,
    codes: codes.map(({ set, ...code }) => ({ ...code, ...(set === undefined ? {} : { set }) })),
    ...(expected === undefined ? {} : { expected }),
    ...(said === undefined ? {} : { said }),
  };
}

const calledOff = (name: string): string => name.slice(0, NAME_CHARACTERS - CALLED_OFF.length) + CALLED_OFF;

/** The sealed sheets this house can open, by flight, with their ids renewed. */
async function unsealed(
  house: House,
  rows: ArchiveRows,
  ids: NewIds,
  same: boolean,
  recovery: Recovery,
): Promise<ReadonlyMap<string, SealedSheets>> {
  const insides = new Map<string, SealedSheets>();
  for (const [i, { flightId, sealed }] of rows.sealedSheets.entries()) {
    const path = ["sealedSheets", i, "flightId"];
    if (!ids.has(`flight:${flightId}`) || insides.has(flightId))
      archiveWrong(path, "a flight of the file, once", flightId);
    const plain = await openedSheets(house, flightId, sealed, recovery);
    if (plain === null) continue;
    const inside = SealedSheets.parse(JSON.parse(plain));
    if (same) {
      insides.set(flightId, inside);
      continue;
    }
    const fresh = freshIds(
      house,
      inside.sheets.map(({ id }) => id),
    );
    const all = new Map([...ids, ...[...fresh].map(([id, to]) => [`sheet:${id}`, to] as const)]);
    const sheets = inside.sheets.map((sheet) => renewed(all, "sheet", sheet, ["sealedSheets", i]));
    const freshEntries = freshIds(
      house,
      inside.entries.map(({ id }) => id),
    );
    const withEntries = new Map([
      ...all,
      ...[...freshEntries].map(([id, to]) => [`entry:${id}`, to] as const),
    ]);
    const entries = inside.entries.map((entry) => renewed(withEntries, "entry", entry, ["sealedSheets", i]));
    const freshWords = freshIds(
      house,
      inside.words.map(({ id }) => id),
    );
    const withWords = new Map([
      ...all,
      ...[...freshWords].map(([id, to]) => [`taughtWord:${id}`, to] as const),
    ]);
    const words = inside.words.map((word) => renewed(withWords, "taughtWord", word, ["sealedSheets", i]));
    insides.set(flightId, { ...inside, sheets, entries, words });
  }
  return insides;
}

/** Under the key that a recovery file had, under this house's own, or as files were sealed before there were wrapping keys. */
async function openedSheets(
  house: House,
  flightId: string,
  sealed: string,
  recovery: Recovery,
): Promise<string | null> {
  const given = recovery[flightId];
  const keys = [
    ...(given === undefined ? [] : [keyOfText(given)]),
    await wrappingKey(house.sealKey, flightId),
    house.sealKey,
  ];
  for (const sealKey of keys) {
    const plain = await unseal({ sealKey }, sealed, sealedFor(flightId));
    if (plain !== null) return plain;
  }
  return null;
}

/** H5: flights under way that go on, because a recovery file had their key and the household comes back as it was. */
async function recovered(
  house: House,
  rows: ArchiveRows,
  same: boolean,
  recovery: Recovery,
): Promise<ReadonlyMap<string, Revived>> {
  const revived = new Map<string, Revived>();
  for (const [flightId, text] of Object.entries(recovery)) {
    const i = rows.sealedKeys.findIndex((row) => row.flightId === flightId);
    const sealed = rows.sealedKeys[i]?.sealed;
    if (sealed === undefined) continue;
    const where = ["sealedKeys", i, "sealed"];
    if (!same) archiveWrong(where, "the household gone from this house before its flights go on", flightId);
    const plain = await unseal({ sealKey: keyOfText(text) }, sealed, keyFor(flightId));
    if (plain === null) archiveWrong(where, "the key of the recovery file", flightId);
    const inside = SealedKeys.parse(JSON.parse(plain));
    const key =
      inside.row === null || inside.plain === null
        ? null
        : { ...inside.row, sealed: await seal(house, inside.plain, flightId), opened: null };
    revived.set(flightId, { holds: inside.holds, key });
  }
  return revived;
}
