import { useSyncExternalStore } from "react";
import { keep, kept, onKept } from "./kept.ts";

/** What this device stored of a flight before its reveal, to hold the published record against. */
export interface Stored {
  readonly commitment?: string;
  readonly closing?: string;
  /** The digest of each entry as the house accepted it; entries count from 1. */
  readonly receipts: readonly { readonly sheet: string; readonly entry: number; readonly hash: string }[];
}

const key = (flight: string): string => `witness.${flight}`;
const NOTHING: Stored = { receipts: [] };

function read(text: string | null): Stored {
  if (text === null) return NOTHING;
  try {
    return JSON.parse(text) as Stored;
  } catch {
    return NOTHING;
  }
}

const storedOf = (flight: string): Stored => read(kept(key(flight)));

export function useStored(flight: string): Stored {
  const text = useSyncExternalStore(onKept, () => kept(key(flight)));
  return read(text);
}

/** Stores what the house promised. What was stored first stays: a promise that changes later is what is to be found. */
export function storePromise(
  flight: string,
  { commitment, closing }: { readonly commitment: string | null; readonly closing: string | null },
): void {
  const before = storedOf(flight);
  const after = {
    ...(commitment === null ? {} : { commitment }),
    ...(closing === null ? {} : { closing }),
    ...before,
  };
  if (JSON.stringify(after) !== JSON.stringify(before)) keep(key(flight), JSON.stringify(after));
}

/** Stores the receipt of an entry; the first for an entry stays. */
export function storeReceipt(flight: string, receipt: Stored["receipts"][number]): void {
  const before = storedOf(flight);
  const known = before.receipts.some(
    ({ sheet, entry }) => sheet === receipt.sheet && entry === receipt.entry,
  );
  if (!known) keep(key(flight), JSON.stringify({ ...before, receipts: [...before.receipts, receipt] }));
}
