import { bytesOfHex } from "./bytes.ts";
import type { Head } from "./closing.ts";
import { chainStart, entryHash } from "./entry-chain.ts";
import type { Finding, FindingCode } from "./finding.ts";
import type { PublishedRecord, Witness } from "./published-record.ts";
import type { Sha256 } from "./sha256.ts";

type Sheet = PublishedRecord["sheets"][number];
/** What was true before the reveal, as far as the record says it: the commitment, the moment of closing, the sheet's head. */
interface Before {
  readonly commitment: string;
  readonly closedAt: number;
  readonly head: Head | undefined;
  readonly receipts: NonNullable<Witness["receipts"]>;
}

/** What is wrong with one sheet: entries that were changed, came too late, run backwards or are gone. */
export function verifySheet(sheet: Sheet, before: Before, sha256: Sha256): readonly Finding[] {
  const { commitment, closedAt, head, receipts } = before;
  const salt = bytesOfHex(sheet.salt) ?? new Uint8Array();
  const found: Finding[] = [];
  const say = (code: FindingCode, entry: number | null, message: string): void =>
    void found.push({ code, sheet: sheet.sheet, entry, message: `sheet ${sheet.sheet}: ${message}` });

  let previous = chainStart(commitment, { sheet: sheet.sheet, salt }, sha256);
  let lockedAt: number | null = null;
  for (const [i, { at, kind, body, hash }] of sheet.entries.entries()) {
    const what = `entry ${i + 1} (${kind})`;
    if (entryHash({ salt }, previous, i, { at, kind, body }, sha256) !== hash) {
      say(
        "changed_entry",
        i + 1,
        `${what} is not what was accepted: it does not fit its digest and the entry before it.`,
      );
    }
    const last = sheet.entries[i - 1];
    if (last !== undefined && at < last.at)
      say("time_runs_back", i + 1, `${what} is older than the entry before it.`);
    if (at > closedAt)
      say("late_entry", i + 1, `${what} came ${at - closedAt} ms after the flight was closed.`);
    else if (head !== undefined && i >= head.entries) {
      say(
        "late_entry",
        i + 1,
        `${what} was added after the flight was closed, which saw ${head.entries} entries.`,
      );
    }
    if (lockedAt !== null)
      say("late_entry", i + 1, `${what} came after the sheet was locked at entry ${lockedAt}.`);
    if (kind === "lock") lockedAt ??= i + 1;
    previous = hash;
  }

  const hashAt = (entries: number): string | undefined =>
    entries === 0
      ? chainStart(commitment, { sheet: sheet.sheet, salt }, sha256)
      : sheet.entries[entries - 1]?.hash;
  if (head !== undefined && sheet.entries.length < head.entries) {
    say(
      "missing_entry",
      head.entries,
      `${head.entries} entries were there at the closing, ${sheet.entries.length} are now.`,
    );
  } else if (head !== undefined && hashAt(head.entries) !== head.hash) {
    say(
      "rewritten_sheet",
      head.entries,
      `its first ${head.entries} entries are not those that were there at the closing.`,
    );
  }
  for (const { entry, hash } of receipts.toSorted((a, b) => a.entry - b.entry)) {
    const now = sheet.entries[entry - 1]?.hash;
    if (now === hash) continue;
    if (now === undefined)
      say("missing_entry", entry, `this phone saw entry ${entry} accepted, and it is gone.`);
    else
      say("rewritten_sheet", entry, `entry ${entry} or one before it is not what this phone saw accepted.`);
    break;
  }
  return found;
}
