import {
  addEntry,
  bytesOfHex,
  type Closing,
  closeFlight,
  commitmentTo,
  type Entry,
  type EntryKind,
  type FlightKey as CoreKey,
  hex,
  keyBytes,
  type PublishedRecord,
  RECORD_FORM,
} from "@partsproof/core/sealing";
import type { SealedKey } from "./flight-key.ts";
import { keyedHash } from "../keyed-hash.ts";
import type { House } from "../ports.ts";
import { Remembered } from "../remembered.ts";
import type { EntryRow, FlightKey, FlightRow, SheetRow } from "../rows.ts";

/** The key in the form that is promised: the same from the setting on to long after the reveal. */
function coreKey(
  flightId: string,
  { glasses, codes, expected }: Pick<SealedKey, "glasses" | "codes" | "expected">,
): CoreKey {
  const turns = new Map<string, number>();
  return {
    flight: flightId,
    glasses: glasses.map(({ vesselId, nameId }, i) => ({ glass: String(i), vessel: vesselId, name: nameId })),
    codes: codes.map(({ sheetId, code, glass, set }) => {
      const row = `${sheetId} ${set ?? ""}`;
      const turn = (turns.get(row) ?? 0) + 1;
      turns.set(row, turn);
      return { sheet: sheetId, ...(set === undefined ? {} : { set }), turn, code, glass: String(glass) };
    }),
    ...(expected === undefined ? {} : { expected: String(expected) }),
  };
}

/** P1: what the house promises before the first glass is poured. */
export function promiseOf(
  { sha256 }: Pick<House, "sha256">,
  flightId: string,
  key: SealedKey,
  nonce: Uint8Array,
): string {
  return commitmentTo(keyBytes(coreKey(flightId, key)), nonce, sha256);
}

/** P2: secret until the reveal, and stored nowhere before it: it follows from the seal key. */
export function saltOf({ sealKey }: Pick<House, "sealKey">, sheetId: string): Promise<string> {
  const known = salts.get(sealKey) ?? new Remembered<Promise<string>>();
  salts.set(sealKey, known);
  const salt = known.get(sheetId) ?? keyedHash({ sealKey }, "salt of a sheet", sheetId);
  known.set(sheetId, salt);
  return salt;
}

/** Every entry needs the salt of its sheet, in the middle of a transaction. */
const salts = new WeakMap<Uint8Array, Remembered<Promise<string>>>();

const bytes = (text: string): Uint8Array => bytesOfHex(text) ?? new Uint8Array();

function kindOf({ kind, written }: Pick<EntryRow, "kind" | "written">): EntryKind {
  if (kind === "locked") return "lock";
  if (written.guesses !== undefined) return "guess";
  // An order of a round is a ranking; what is picked in a set is a guess at which is which.
  if (written.answers !== undefined)
    return written.answers.some(({ ranking }) => ranking !== null) ? "rank" : "guess";
  return written.ranking !== undefined ? "rank" : "note";
}

type Unhashed = Pick<EntryRow, "kind" | "written" | "createdAt">;

const coreEntry = (row: Unhashed): Omit<Entry, "hash"> => ({
  at: Date.parse(row.createdAt),
  kind: kindOf(row),
  body: JSON.stringify(row.written),
});

const hashed = (row: EntryRow): Entry => ({ ...coreEntry(row), hash: row.hash ?? "" });

/** P2: the digest of a sheet's next entry; null at a flight that has promised nothing. */
export async function chained(
  house: House,
  { commitment }: FlightRow,
  sheet: SheetRow,
  last: EntryRow | null,
  next: Unhashed,
): Promise<string | null> {
  if (commitment === null) return null;
  // Only the last entry and the count of them go into the digest.
  const entries = last === null ? [] : Array<Entry>(sheet.entries).fill(hashed(last));
  const core = { sheet: sheet.id, salt: bytes(await saltOf(house, sheet.id)), entries };
  const entry = coreEntry(next);
  const added = addEntry({ commitment, sheet: core, entry, closedAt: null, sha256: house.sha256 });
  if (!added.ok) throw new Error(added.issue.message);
  return added.sheet.entries.at(-1)?.hash ?? null;
}

/** P3: one digest over all sheets, when nothing on any of them can change any more. */
export async function closingOf(
  house: House,
  { commitment }: FlightRow,
  sheets: readonly SheetRow[],
  entries: readonly EntryRow[],
  now: Date,
): Promise<FlightRow["closing"]> {
  if (commitment === null) return null;
  const core = [];
  for (const { id } of sheets) {
    const own = entries.filter(({ sheetId }) => sheetId === id).toSorted((a, b) => a.number - b.number);
    core.push({ sheet: id, salt: bytes(await saltOf(house, id)), entries: own.map(hashed) });
  }
  const latest = Math.max(now.getTime(), ...entries.map(({ createdAt }) => Date.parse(createdAt)));
  const { closedAt, heads, hash }: Closing = closeFlight(commitment, core, latest, house.sha256);
  return { closedAt, heads: heads.map((head) => ({ ...head })), hash };
}

/** P4: everything that anybody needs to check the promise; null where there was none. */
export function recordOf(
  { id, commitment, closing }: FlightRow,
  { nonce, salts, ...opened }: FlightKey,
  sheets: readonly SheetRow[],
  entries: readonly EntryRow[],
): PublishedRecord | null {
  if (commitment === null || closing === null || nonce === undefined || salts === undefined) return null;
  return {
    form: RECORD_FORM,
    commitment,
    nonce,
    key: hex(keyBytes(coreKey(id, opened))),
    closing,
    sheets: sheets.map((sheet) => ({
      sheet: sheet.id,
      salt: salts.find(({ sheetId }) => sheetId === sheet.id)?.salt ?? "",
      entries: entries
        .filter(({ sheetId }) => sheetId === sheet.id)
        .toSorted((a, b) => a.number - b.number)
        .map(hashed),
    })),
  };
}
