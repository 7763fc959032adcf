import type { House } from "../ports.ts";
import { Remembered } from "../remembered.ts";

/** W8: what was reckoned, by a digest of all that it was reckoned from; so it can never be out of date. Kept in memory. */
const kept = new WeakMap<House, Remembered<unknown>>();

/** Four bytes of a digest as the start of a repeatable source of chance. */
const startFrom = (digest: Uint8Array): number =>
  new DataView(digest.buffer, digest.byteOffset, digest.byteLength).getUint32(0);

/**
 * `reckon` of this evidence, or what it gave before. Chance starts from the digest: the same evidence always gives the same answer.
 *
 * @param what tells sums of the same evidence apart
 */
export function keptFor<T>(house: House, what: string, evidence: unknown, reckon: (start: number) => T): T {
  const digest = house.sha256(new TextEncoder().encode(JSON.stringify([what, evidence])));
  const key = [...digest].map((byte) => byte.toString(16).padStart(2, "0")).join("");
  const all = kept.get(house) ?? new Remembered<unknown>();
  kept.set(house, all);
  const before = all.get(key) as { readonly found: T } | undefined;
  if (before !== undefined) return before.found;
  const found = reckon(startFrom(digest));
  all.set(key, { found });
  return found;
}
