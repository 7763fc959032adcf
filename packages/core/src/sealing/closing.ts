import { hex } from "./bytes.ts";
import { chainStart, type Sheet } from "./entry-chain.ts";
import { fieldBytes } from "./fields.ts";
import { requireSha256, type Sha256 } from "./sha256.ts";

/** Where one sheet stood when the flight was closed. */
export interface Head {
  readonly sheet: string;
  readonly entries: number;
  /** Hash of the last entry, or of the sheet's start when there is none. */
  readonly hash: string;
}

/** What all sheets were at the moment of closing. Every phone stores `hash` before the key is opened. */
export interface Closing {
  /** Milliseconds since 1970-01-01T00:00:00Z. */
  readonly closedAt: number;
  /** In ascending order of sheet. */
  readonly heads: readonly Head[];
  readonly hash: string;
}

export const closingHash = (
  commitment: string,
  { closedAt, heads }: Omit<Closing, "hash">,
  sha256: Sha256,
): string => {
  const fields = heads.flatMap(({ sheet, entries, hash }) => [sheet, entries, hash]);
  return hex(
    sha256(fieldBytes(["parts-and-proof/closing/1", commitment, closedAt, heads.length, ...fields])),
  );
};

/**
 * Closes a flight: one digest over the heads of all its sheets. From here on a changed, added or missing entry no longer fits.
 *
 * It tells nothing of what was written: the heads rest on salts that are secret until the reveal.
 *
 * @throws RangeError when `closedAt` is no whole number, or lies before an entry
 */
export function closeFlight(
  commitment: string,
  sheets: readonly Sheet[],
  closedAt: number,
  sha256: Sha256,
): Closing {
  requireSha256(sha256);
  const latest = Math.max(...sheets.flatMap(({ entries }) => entries.map(({ at }) => at)), -Infinity);
  if (!Number.isSafeInteger(closedAt) || closedAt < latest) {
    throw new RangeError(
      `closing requires a whole number of milliseconds from ${latest}, got ${closedAt} ms`,
    );
  }
  const heads = sheets
    .map((sheet) => ({
      sheet: sheet.sheet,
      entries: sheet.entries.length,
      hash: sheet.entries.at(-1)?.hash ?? chainStart(commitment, sheet, sha256),
    }))
    .toSorted((a, b) => (a.sheet < b.sheet ? -1 : 1));
  return { closedAt, heads, hash: closingHash(commitment, { closedAt, heads }, sha256) };
}
