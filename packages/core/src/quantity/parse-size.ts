import { unreadable } from "./reading.ts";
import type { Reading } from "./reading.ts";
import { CM_IN } from "./units.data.ts";

const NUMBER = /^\d+(?:\.\d+)?$/;

/**
 * Reads lengths with "x" between them and their unit at the end, as centimetres: "10x10x160mm", "1 x 1 x 16 cm". The unit must be
 * said: a length that could be centimetres or millimetres is refused.
 *
 * Issue codes: `size_unreadable`.
 *
 * @param count how many lengths are asked for
 * @example
 * parseSize("10x10x160mm", 3); // { ok: true, value: [1, 1, 16] }
 */
export function parseSize(text: string, count: number): Reading<readonly number[]> {
  const limit = `${count} lengths with x between them and mm, cm or in at the end`;
  const bare = text.trim().toLowerCase();
  const unit = /[a-z]+$/.exec(bare)?.[0] ?? "";
  const size = CM_IN.get(unit);
  const parts = bare
    .slice(0, bare.length - unit.length)
    .split(/[x×]/)
    .map((part) => part.trim());
  if (size === undefined || parts.length !== count || !parts.every((part) => NUMBER.test(part)))
    return unreadable("size", "size_unreadable", limit, text);
  // Whole millimetres stay whole tenths: 0.1 times 3 is not 0.3.
  return { ok: true, value: parts.map((part) => (unit === "mm" ? Number(part) / 10 : Number(part) * size)) };
}
