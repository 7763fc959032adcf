/** What happens to a kept-up bottle; `at` is days from any start, not falling. */
export type KeptUpStep =
  | {
      readonly kind: "add";
      readonly at: number;
      readonly liquidId: string;
      readonly ethanolG: number;
      readonly waterG: number;
    }
  /** Poured out, mL at 20 °C of what is in it. */
  | { readonly kind: "pour"; readonly at: number; readonly ml: number };

/** One addition and what became of it. */
export interface Addition {
  readonly step: number;
  readonly at: number;
  readonly liquidId: string;
  readonly ethanolG: number;
  readonly waterG: number;
  /** Part of it that is still there at the end. */
  readonly left: number;
  /** Days until half of it or less was left; null while more is. */
  readonly halfLife: number | null;
}

/** A fold over all steps. */
export interface KeptUp {
  readonly ok: true;
  readonly additions: readonly Addition[];
  /** After each step: mL at 20 °C, g of ethanol and of water. */
  readonly volumeMl: Float64Array;
  readonly ethanolG: Float64Array;
  readonly waterG: Float64Array;
  /** Part of what was in the bottle at the start of its age that is kept after each step, and which age: emptied, it begins anew. */
  readonly kept: Float64Array;
  readonly age: Int32Array;
}

/** Why it cannot have been. */
export interface NotKeptUp {
  readonly ok: false;
  readonly code: "more_than_there_is" | "above_capacity";
  readonly step: number;
  readonly limitMl: number;
  readonly receivedMl: number;
}
