import { createHash } from "node:crypto";
import type { Random } from "@partsproof/house/services";

/** The same bytes for the same seed, evenly spread: SHA-256 of the seed and a counter, block after block. Not secret. */
export function seededRandom(seed: number): Random {
  let block = 0;
  let left = Buffer.alloc(0);
  return {
    bytes: (count) => {
      while (left.length < count) {
        left = Buffer.concat([left, createHash("sha256").update(`${seed}:${block++}`).digest()]);
      }
      const bytes = new Uint8Array(left.subarray(0, count));
      left = left.subarray(count);
      return bytes;
    },
  };
}
