import type { Meaning } from "../../protocol/index.ts";

/** Nose, palate, finish. */
export type Words = readonly [nose: string, palate: string, finish: string];

/** One glass on one sheet. A vessel poured twice is "x" and "x again", in the order this taster came to them. */
export interface GlassScript {
  readonly glass: string;
  readonly first: Words;
  readonly second?: Words;
  readonly score?: number;
  /** The vessel whose name was guessed. */
  readonly guess?: string;
  /** How sure that guess was, in per cent, where that was said. */
  readonly sure?: number;
}

export interface SheetScript {
  readonly taster: string;
  /** How far it got. */
  readonly until: "locked" | "open" | "free";
  readonly glasses: readonly GlassScript[];
  /** What this taster said to mean by a phrase, while tasting. */
  readonly taught?: readonly (readonly [phrase: string, means: Meaning])[];
  /** Best first; an inner list is a tie. */
  readonly ranking?: readonly (readonly string[])[];
}

/** An evening. Codes and orders are drawn when it is played, so glasses are told by what is poured into them. */
export interface FlightScript {
  readonly name: string;
  /** Who pours; none when alone. */
  readonly pourer: string | null;
  /** Vessels, one a glass; when alone, in the order of the places where they stood. */
  readonly glasses: readonly string[];
  readonly distractors?: readonly string[];
  readonly target?: string;
  readonly pourMl: number;
  readonly sheets: readonly SheetScript[];
}
