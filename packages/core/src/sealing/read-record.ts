import { bytesOfHex } from "./bytes.ts";
import { LEAST_NONCE_BYTES } from "./commitment.ts";
import type { Issue } from "./issue.ts";
import { type PublishedRecord, RECORD_FORM } from "./published-record.ts";

type Shape = (value: unknown, path: Issue["path"]) => readonly Issue[];

const shown = (value: unknown): string =>
  value === undefined ? "nothing" : typeof value === "string" ? `"${value.slice(0, 80)}"` : typeof value;

const must =
  (limit: string, holds: (value: unknown) => boolean): Shape =>
  (value, path) =>
    holds(value)
      ? []
      : [
          {
            code: "record_malformed",
            path,
            limit,
            received: shown(value),
            message: `${path.join(".") || "a record"} requires ${limit}, got ${shown(value)}`,
          },
        ];

const text = must("a text of whole characters", (value) => typeof value === "string" && value.isWellFormed());
const count = must("a whole number from 0", (value) => Number.isSafeInteger(value) && Number(value) >= 0);
const digits = (least: number, most = Infinity): Shape =>
  must(`${2 * least} or more lower-case hexadecimal digits`, (value) => {
    const length = typeof value === "string" ? bytesOfHex(value)?.length : undefined;
    return length !== undefined && length >= least && length <= most;
  });
const digest = digits(32, 32);

/** Exactly these properties, and no others: what is not hashed must not ride along. */
const object =
  (shape: Readonly<Record<string, Shape>>): Shape =>
  (value, path) => {
    const names = Object.keys(shape);
    const plain = must(`exactly the properties ${names.join(", ")}`, (it) => {
      if (typeof it !== "object" || it === null || Array.isArray(it)) return false;
      return Object.keys(it).toSorted().join() === names.toSorted().join();
    })(value, path);
    if (plain.length > 0) return plain;
    return names.flatMap(
      (name) => shape[name]?.((value as Record<string, unknown>)[name], [...path, name]) ?? [],
    );
  };
const list =
  (each: Shape): Shape =>
  (value, path) =>
    Array.isArray(value)
      ? value.flatMap((item, i) => each(item, [...path, i]))
      : must("a list", () => false)(value, path);

const record = object({
  form: must(RECORD_FORM, (value) => value === RECORD_FORM),
  commitment: digest,
  nonce: digits(LEAST_NONCE_BYTES),
  key: digits(1),
  closing: object({
    closedAt: count,
    heads: list(object({ sheet: text, entries: count, hash: digest })),
    hash: digest,
  }),
  sheets: list(
    object({
      sheet: text,
      salt: digits(LEAST_NONCE_BYTES),
      entries: list(
        object({
          at: count,
          kind: must("note, guess, rank or lock", (value) =>
            /^(?:note|guess|rank|lock)$/.test(String(value)),
          ),
          body: text,
          hash: digest,
        }),
      ),
    }),
  ),
});

/** A published record from outside, or everything that is wrong with its shape. Whether it is true is for `verifyRecord`. */
export function readRecord(
  value: unknown,
):
  | { readonly ok: true; readonly record: PublishedRecord }
  | { readonly ok: false; readonly issues: readonly Issue[] } {
  const issues = record(value, []);
  return issues.length === 0 ? { ok: true, record: value as PublishedRecord } : { ok: false, issues };
}
