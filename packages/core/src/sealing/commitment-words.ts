import { bytesOfHex } from "./bytes.ts";
import { WORDS } from "./words.data.ts";

/** Words shown of a commitment, 8 bits each. */
export const WORDS_SHOWN = 6;
/** Bits the words carry, of the 256. */
export const WORDS_BITS = 8 * WORDS_SHOWN;

/**
 * The first six bytes of a digest as words, for comparing two phones by eye or ear.
 *
 * They carry 48 bits. That finds a mix-up, and any change that was not made to deceive: a changed digest shows the same words
 * once in 2⁴⁸. It does not stop somebody who sets out to cheat: of some 2²⁴ keys tried (seconds of work) two show the same
 * words. What stops that is the comparison of all 256 bits, which every phone stores and compares by itself.
 *
 * @param digest 64 lower-case hexadecimal digits
 * @throws RangeError for anything else
 * @example commitmentWords("00".repeat(32)) // ["acorn", "acorn", "acorn", "acorn", "acorn", "acorn"]
 */
export function commitmentWords(digest: string): string[] {
  const bytes = bytesOfHex(digest);
  if (bytes?.length !== 32) {
    throw new RangeError(`commitmentWords requires 64 lower-case hexadecimal digits, got "${digest}"`);
  }
  return Array.from(bytes.subarray(0, WORDS_SHOWN), (byte) => WORDS[byte] ?? "");
}
