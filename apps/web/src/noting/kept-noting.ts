import { keep, kept } from "../session/index.ts";
import type { Mark } from "./mark.ts";

/** Of one glass in one pass: what its words last gave the sheet, and what was put right. */
export interface Noting {
  readonly gave: ReadonlyMap<string, number>;
  readonly marks: readonly Mark[];
}

interface Stored {
  readonly gave: readonly (readonly [key: string, strength: number])[];
  readonly marks: readonly Mark[];
}

const name = (sheet: string): string => `noting.${sheet}`;

function storedOf(sheet: string): Readonly<Record<string, Stored>> {
  try {
    return (JSON.parse(kept(name(sheet)) ?? "{}") ?? {}) as Readonly<Record<string, Stored>>;
  } catch {
    return {};
  }
}

/** What this phone knows of a glass in a pass; null where nothing was read on it. */
export function keptNoting(sheet: string, glass: string): Noting | null {
  const stored = storedOf(sheet)[glass];
  return stored === undefined ? null : { gave: new Map(stored.gave), marks: stored.marks };
}

/** Words that were put right are words of a note: they stay on the phone, and go when the sheet is locked or its flight is over. */
export function keepNoting(sheet: string, glass: string, { gave, marks }: Noting): void {
  keep(name(sheet), JSON.stringify({ ...storedOf(sheet), [glass]: { gave: [...gave], marks } }));
}

export const forgetNoting = (sheet: string): void => keep(name(sheet), null);
