import { sha256 } from "@noble/hashes/sha2.js";
import { type FindingCode, readRecord, verifyRecord } from "@partsproof/core/sealing";
import type { Stored } from "../../session/index.ts";

export interface Checked {
  readonly headline: string;
  /** Everything that does not fit, in words. */
  readonly findings: readonly string[];
  /** What could not be checked, in words. */
  readonly unchecked: readonly string[];
}

const KEY: ReadonlySet<FindingCode> = new Set(["changed_key", "unreadable_key", "other_commitment"]);

/**
 * What was changed, for a headline: the key, something written, or something that came too late. A phone that stored nothing
 * before cannot say that nothing was.
 */
function headlineOf(codes: readonly FindingCode[], whole: boolean): string {
  if (codes.length === 0) return whole ? "Nothing was changed" : "The record agrees with itself";
  const said = [
    ...(codes.some((code) => KEY.has(code)) ? ["the key was changed"] : []),
    ...(codes.includes("late_entry") ? ["something was written after the close"] : []),
    ...(codes.some((code) => !KEY.has(code) && code !== "late_entry")
      ? ["a sheet is not as it was locked"]
      : []),
  ];
  const text = said.join("; ");
  return text.charAt(0).toUpperCase() + text.slice(1);
}

const UNCHECKED = {
  commitment:
    "This phone stored no promise before the first glass, so it can only see that the record agrees with itself.",
  closing:
    "This phone stored no closing before the reveal, so sheets rewritten as a whole would not be found here.",
} as const;

/** Checks a published record against itself and what this phone stored. SHA-256 is a library's: plain HTTP has no other. */
export function checked(value: unknown, stored: Stored): Checked {
  const read = readRecord(value);
  if (!read.ok) {
    const findings = read.issues.slice(0, 5).map(({ message }) => message);
    return { headline: "This is no record that can be read", findings, unchecked: [] };
  }
  const { findings, unchecked } = verifyRecord(read.record, stored, sha256);
  return {
    headline: headlineOf(
      findings.map(({ code }) => code),
      unchecked.length === 0,
    ),
    findings: findings.map(({ message }) => message),
    unchecked: unchecked.map((what) => UNCHECKED[what]),
  };
}
