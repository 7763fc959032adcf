import { hex, utf8 } from "./bytes.ts";

/**
 * SHA-256 (FIPS 180-4) of whole bytes, as the caller's well-kept library computes it. Core brings none of its own, and must not
 * take it from `crypto.subtle`: browsers withhold that on a page of a plain-HTTP address.
 */
export type Sha256 = (bytes: Uint8Array) => Uint8Array;

/** Examples of FIPS 180-4: one block ("abc") and two. https://csrc.nist.gov/projects/cryptographic-standards-and-guidelines/example-values */
const EXAMPLES: readonly (readonly [message: string, digest: string])[] = [
  ["abc", "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"],
  [
    "abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq",
    "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1",
  ],
];

const proven = new WeakSet<Sha256>();

/**
 * Throws unless the function gives the digests of the examples of FIPS 180-4, so that a wrong or half-working hash is found
 * before anything is sealed or judged with it. Cost: three blocks, some microseconds, once for each function: a house seals
 * every entry with the same one.
 *
 * @throws TypeError when a digest differs
 */
export function requireSha256(sha256: Sha256): void {
  if (proven.has(sha256)) return;
  for (const [message, digest] of EXAMPLES) {
    const got = hex(sha256(utf8(message)));
    if (got !== digest) {
      throw new TypeError(`sealing requires SHA-256, with ${digest} for "${message}", got ${got}`);
    }
  }
  proven.add(sha256);
}
