import type { Pouring } from "./pouring.ts";
import { standing } from "./standing.ts";

/** Reads back what this device kept; null where it is no pouring that can go on. */
export function asPouring(text: string | null): Pouring | null {
  if (text === null) return null;
  try {
    const read = JSON.parse(text) as Partial<Pouring> | null;
    if (read?.v !== 1 || typeof read.key !== "string") return null;
    const whole = read as Pouring;
    // Whatever cannot be folded cannot be gone on with.
    standing(whole);
    return whole;
  } catch {
    return null;
  }
}
