import { bytesOfHex } from "./bytes.ts";
import { closingHash } from "./closing.ts";
import { commitmentTo } from "./commitment.ts";
import type { Finding, FindingCode } from "./finding.ts";
import type { FlightKey } from "./flight-key.ts";
import type { PublishedRecord, Witness } from "./published-record.ts";
import { readFlightKey } from "./read-flight-key.ts";
import type { Sha256 } from "./sha256.ts";
import { verifySheet } from "./verify-sheet.ts";

export interface Verification {
  /** Everything that does not fit; empty when all fits. */
  readonly findings: readonly Finding[];
  /** What could not be checked, because this phone did not store it before the reveal. */
  readonly unchecked: readonly ("commitment" | "closing")[];
  /** The key as published, when it can be read. */
  readonly key: FlightKey | null;
}

/**
 * Checks a published record, in itself and against what a phone stored before the reveal, and says what differs: a changed key,
 * a changed guess, a late guess, something missing.
 *
 * Without a stored commitment and closing the record is only known to agree with itself: a house that rewrote everything after
 * the reveal would not be found. Times are the house's own clock. Both are said in SPEC.md.
 *
 * @param record of the right shape (`readRecord`)
 * @throws TypeError when `sha256` is not SHA-256
 */
export function verifyRecord(record: PublishedRecord, witness: Witness, sha256: Sha256): Verification {
  const { commitment, closing, sheets } = record;
  const found: Finding[] = [];
  const say = (code: FindingCode, message: string): void =>
    void found.push({ code, sheet: null, entry: null, message });

  const key = bytesOfHex(record.key) ?? new Uint8Array();
  if (commitmentTo(key, bytesOfHex(record.nonce) ?? new Uint8Array(), sha256) !== commitment) {
    say("changed_key", "The key is not the one that was sealed: key and nonce do not give the commitment.");
  }
  if (witness.commitment !== undefined && witness.commitment !== commitment) {
    say("other_commitment", "The commitment is not the one this phone stored before the first glass.");
  }
  const read = readFlightKey(key);
  if (!read.ok) say("unreadable_key", `The key cannot be read: ${read.issue.message}.`);

  if (closingHash(commitment, closing, sha256) !== closing.hash) {
    say(
      "changed_closing",
      "The closing was changed: its list of sheets or its time does not give its digest.",
    );
  }
  if (witness.closing !== undefined && witness.closing !== closing.hash) {
    say(
      "other_closing",
      "The closing is not the one this phone stored before the reveal: sheets were changed after it.",
    );
  }
  const names = sheets.map(({ sheet }) => sheet);
  const closed = closing.heads.map(({ sheet }) => sheet);
  const odd = [...closed, ...names].filter(
    (name, i, all) => all.indexOf(name) === i && !(once(names, name) && once(closed, name)),
  );
  for (const sheet of odd) {
    const message = `sheet ${sheet}: it stands ${count(closed, sheet)} times in the closing and ${count(names, sheet)} times in the record.`;
    found.push({ code: "sheet_set_changed", sheet, entry: null, message });
  }
  for (const sheet of sheets) {
    const head = closing.heads.find((one) => one.sheet === sheet.sheet);
    const receipts = (witness.receipts ?? []).filter((one) => one.sheet === sheet.sheet);
    found.push(...verifySheet(sheet, { commitment, closedAt: closing.closedAt, head, receipts }, sha256));
  }
  const unchecked = (["commitment", "closing"] as const).filter((what) => witness[what] === undefined);
  return { findings: found, unchecked, key: read.ok ? read.key : null };
}

const count = (list: readonly string[], item: string): number => list.filter((one) => one === item).length;
const once = (list: readonly string[], item: string): boolean => count(list, item) === 1;
