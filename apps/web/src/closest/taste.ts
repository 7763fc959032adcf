import type { Whiskey } from "@partsproof/house/protocol";

/** What a whiskey tastes of: 0 to 10 by attribute, null where nobody has said. */
export interface Taste {
  readonly values: Readonly<Record<string, number | null>>;
  /** % vol it was tasted at; null where not known. */
  readonly tastedAt: number | null;
}

/** Null where nothing at all has been said. */
export function tasteOf(_whiskey: Whiskey): Taste | null {
  return null;
}
