import type { Reading } from "@partsproof/core/quantity";
import type { Read } from "./flag.ts";

const NUMBER = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i;

/** A reading that failed, in the words of the house. */
export function unread(what: string, code: string, limit: string, text: string): Reading<never> {
  const received = text.length > 60 ? `${text.slice(0, 60)}…` : text;
  const got = received.trim() === "" ? "nothing" : `"${received}"`;
  return { ok: false, issue: { code, limit, received, message: `${what} requires ${limit}, got ${got}` } };
}

/** A number from `low` to `high`, such as 0.4 or 4e-1. */
export const readNumber =
  (what: string, low: number, high: number, unit = ""): Read<number> =>
  (text) => {
    const tail = unit === "" ? "" : ` ${unit}`;
    const limit = `a number from ${low} to ${high}${tail}`;
    if (!NUMBER.test(text.trim())) return unread(what, "number_unreadable", limit, text);
    const value = Number(text);
    if (value > high) return unread(what, "value_too_large", `at most ${high}${tail}`, text);
    if (value < low) return unread(what, "value_too_small", `at least ${low}${tail}`, text);
    return { ok: true, value };
  };

/** A whole number from `low` to `high`. */
export const readWhole =
  (what: string, low: number, high: number, unit = ""): Read<number> =>
  (text) => {
    const read = readNumber(what, low, high, unit)(text);
    if (!read.ok || Number.isInteger(read.value)) return read;
    return unread(what, "not_whole", `a whole number from ${low} to ${high}`, text);
  };
