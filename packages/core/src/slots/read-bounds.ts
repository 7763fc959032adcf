import type { Bounds } from "./rule.ts";
import type { TokenReader } from "./token-reader.ts";

/** A bound of one side, as the words before or behind the number say. */
export const bounded = (side: "least" | "most", value: number): Bounds =>
  side === "least" ? { low: value, high: null } : { low: null, high: value };

/** "low to high", where low has been read. */
export function upTo(reader: TokenReader, what: string, low: number, most: number, whole = false): Bounds {
  return { low, high: reader.number(`${what}, not below ${low}`, low, most, whole) };
}
