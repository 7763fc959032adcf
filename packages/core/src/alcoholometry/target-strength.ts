import type { Abv20 } from "../quantity/index.ts";
import type { OutOfReach } from "./out-of-reach.ts";

/** Why water cannot take a liquid from one strength to the other; null when it can. */
export function targetOutOfReach(from: Abv20, to: Abv20): OutOfReach | null {
  if (to > from) {
    const message = `target strength requires at most the starting ${from} % vol, got ${to} % vol`;
    return { ok: false, issue: { code: "target_above_start", limit: from, received: to, message } };
  }
  if (to === 0 && from > 0) {
    const message = `target strength requires more than 0 % vol (no amount of water gets there), got ${to} % vol`;
    return { ok: false, issue: { code: "target_without_alcohol", limit: 0, received: to, message } };
  }
  return null;
}
