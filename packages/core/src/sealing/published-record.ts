import type { Closing } from "./closing.ts";
import type { Entry } from "./entry-chain.ts";

/** What the house publishes at the reveal; anybody can check it against what their phone stored before. */
export interface PublishedRecord {
  readonly form: typeof RECORD_FORM;
  readonly commitment: string;
  /** Hexadecimal. */
  readonly nonce: string;
  /** Canonical bytes of the key, hexadecimal. */
  readonly key: string;
  readonly closing: Closing;
  readonly sheets: readonly {
    readonly sheet: string;
    /** Hexadecimal. */
    readonly salt: string;
    readonly entries: readonly Entry[];
  }[];
}

export const RECORD_FORM = "parts-and-proof/record/1";

/** What one phone stored before the reveal; whatever it has not seen is left out, and then cannot be checked. */
export interface Witness {
  readonly commitment?: string;
  /** Hash of the closing. */
  readonly closing?: string;
  /** Receipts: the hash of an entry as the house accepted it. `entry` counts from 1. */
  readonly receipts?: readonly { readonly sheet: string; readonly entry: number; readonly hash: string }[];
}
