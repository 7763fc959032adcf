import { type Rng, shuffled } from "../statistics/index.ts";

function hints(code: number): boolean {
  const [a = 0, b = 0, c = 0] = String(code).split("").map(Number);
  const alike = a === b && b === c;
  const run = Math.abs(b - a) === 1 && b - a === c - b;
  const round = b === 0 && c === 0;
  return alike || run || round;
}

/**
 * The 867 codes a glass may bear: "101" to "998", without those that look like a rank or a joke and so hint at
 * something: three equal digits (777), a run up or down (123, 321) and whole hundreds (500).
 */
export const BLIND_CODES: readonly string[] = Array.from({ length: 900 }, (_, i) => 100 + i)
  .filter((code) => !hints(code))
  .map(String);

/**
 * Different three-digit blind codes in random order, every code as likely as the others.
 *
 * Three-digit random codes are ISO 6658 practice; which codes are left out is common practice, no source.
 *
 * @param count how many; at most 867 (all of `BLIND_CODES`) less those to avoid
 * @param rng source of chance
 * @param avoid codes already used, for example earlier the same evening
 * @throws RangeError when count is not whole, is negative, or there are not that many codes
 * @example drawCodes(5, rng) // ["482", "719", "305", "861", "294"]
 */
export function drawCodes(count: number, rng: Rng, avoid: ReadonlySet<string> = new Set()): string[] {
  const free = BLIND_CODES.filter((code) => !avoid.has(code));
  if (!Number.isInteger(count) || count < 0 || count > free.length) {
    throw new RangeError(`drawCodes requires a whole count from 0 to ${free.length} codes, got ${count}`);
  }
  return shuffled(free, rng).slice(0, count);
}
