import { hex } from "./bytes.ts";
import { requireNonce } from "./commitment.ts";
import { fieldBytes } from "./fields.ts";
import { requireSha256, type Sha256 } from "./sha256.ts";

export type EntryKind = "note" | "guess" | "rank" | "lock";

/** One thing a taster wrote, as it was accepted. Entries are added and never changed; a later one of the same kind counts. */
export interface Entry {
  /** When the house accepted it: milliseconds since 1970-01-01T00:00:00Z. */
  readonly at: number;
  readonly kind: EntryKind;
  /** What was written, in the house's own form. */
  readonly body: string;
  /** Digest over this entry and the one before. */
  readonly hash: string;
}

/** A sheet's entries in order. The salt is random and stays secret until the reveal, or hashes of guesses could be guessed. */
export interface Sheet {
  readonly sheet: string;
  /** At least 128 random bits. */
  readonly salt: Uint8Array;
  readonly entries: readonly Entry[];
}

const FORM = "parts-and-proof/entry/1";

/** Digest a sheet starts from: it belongs to one commitment, one sheet and one salt. */
export const chainStart = (
  commitment: string,
  { sheet, salt }: Omit<Sheet, "entries">,
  sha256: Sha256,
): string => hex(sha256(fieldBytes(["parts-and-proof/sheet/1", commitment, sheet, salt])));

/** Digest of the entry that stands at `index` (from 0) after `previous`. */
export const entryHash = (
  { salt }: Pick<Sheet, "salt">,
  previous: string,
  index: number,
  { at, kind, body }: Omit<Entry, "hash">,
  sha256: Sha256,
): string => hex(sha256(fieldBytes([FORM, salt, previous, index, at, kind, body])));

/** What became of an entry that was to be added. */
export type Added =
  | { readonly ok: true; readonly sheet: Sheet }
  | {
      readonly ok: false;
      readonly issue: {
        readonly code: "sheet_locked" | "flight_closed" | "time_runs_back";
        readonly limit: number;
        readonly received: number;
        readonly message: string;
      };
    };

/**
 * The sheet with one more entry. Nothing can be added after its lock, after the flight was closed, or before its last entry.
 *
 * @param ask.closedAt when the flight was closed, null while it is open
 * @throws RangeError when `at` is no whole number of milliseconds or the salt is below 128 bits
 */
export function addEntry(ask: {
  readonly commitment: string;
  readonly sheet: Sheet;
  readonly entry: Omit<Entry, "hash">;
  readonly closedAt: number | null;
  readonly sha256: Sha256;
}): Added {
  const { commitment, sheet, entry, closedAt, sha256 } = ask;
  requireNonce(sheet.salt);
  requireSha256(sha256);
  if (!Number.isSafeInteger(entry.at)) {
    throw new RangeError(`an entry requires a whole number of milliseconds, got ${entry.at} ms`);
  }
  const last = sheet.entries.at(-1);
  const refuse = (
    code: "sheet_locked" | "flight_closed" | "time_runs_back",
    limit: number,
    condition: string,
  ) => ({
    ok: false as const,
    issue: {
      code,
      limit,
      received: entry.at,
      message: `an entry requires ${condition}, got one at ${entry.at} ms`,
    },
  });
  if (last?.kind === "lock") return refuse("sheet_locked", last.at, "a sheet that is not locked");
  if (closedAt !== null) return refuse("flight_closed", closedAt, "a flight that is not closed");
  if (last !== undefined && entry.at < last.at) {
    return refuse("time_runs_back", last.at, `a time not before ${last.at} ms`);
  }
  const previous = last?.hash ?? chainStart(commitment, sheet, sha256);
  const hash = entryHash(sheet, previous, sheet.entries.length, entry, sha256);
  return { ok: true, sheet: { ...sheet, entries: [...sheet.entries, { ...entry, hash }] } };
}
