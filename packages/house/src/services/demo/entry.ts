import type { AttributeId } from "@partsproof/core/sensory";
import type { OakPiece, StatedStrength, VesselKind, WoodSpecies } from "../../protocol/index.ts";
import type { z } from "zod";
import type { FlightScript } from "./flight-script.ts";
import type { When } from "./script-clock.ts";
import type { WhiskeyKey } from "./whiskeys.data.ts";

/** A whole bottle from the shop, or one that was there already. */
interface Shelve {
  readonly does: "shelve";
  readonly bottle: string;
  readonly of: WhiskeyKey;
  readonly label?: string;
  /** What was in it; full where not said. Less than full means opened. */
  readonly levelMl?: number;
  readonly paidMinor?: number;
}

interface SetOut {
  readonly does: "set out";
  readonly vessel: string;
  readonly kind: Exclude<z.infer<typeof VesselKind>, "bottle">;
  readonly label: string;
  readonly capacityMl: number;
}

/** From a vessel or "tap", to a vessel or "glass", "drain", "air". */
interface Pour {
  readonly does: "pour";
  readonly from: string;
  readonly to: string;
  readonly ml: number | "all";
  readonly note?: string;
  /** A name for it, if it is undone later. */
  readonly as?: string;
}

interface Undo {
  readonly does: "undo";
  readonly pour: string;
}

/** One version of a recipe: parts of whiskeys or of batches made before. */
export interface Body {
  readonly parts: readonly (readonly [of: string, parts: number])[];
  readonly waterTo?: StatedStrength;
  readonly restDays?: number;
  readonly oak?: string;
  /** Why it is so, or why it changed. */
  readonly note: string;
}

interface Write {
  readonly does: "write";
  readonly recipe: string;
  readonly name: string;
  readonly target?: WhiskeyKey;
  readonly body: Body;
}

interface Rewrite {
  readonly does: "rewrite";
  readonly recipe: string;
  readonly body: Body;
}

/** A batch into a new bottle, by the recipe's latest version of that day. */
interface Make {
  readonly does: "make";
  readonly batch: string;
  readonly name: string;
  readonly recipe: string;
  readonly bottle: { readonly label: string; readonly capacityMl: number };
  /** As really poured, in order. */
  readonly pours: readonly (readonly [from: string, ml: number])[];
  readonly note: string;
}

/** Something more to say about a batch; perhaps the last. */
interface Remark {
  readonly does: "remark";
  readonly batch: string;
  readonly note: string;
  readonly finished?: boolean;
}

/** Oak goes into a batch, with the rule for when it comes out. */
interface Lay {
  readonly does: "lay";
  readonly batch: string;
  readonly wood: {
    readonly piece: OakPiece;
    readonly species: WoodSpecies;
    readonly toast: string;
  };
  readonly pull: { readonly attribute: AttributeId; readonly level: number };
}

/** A check tasting of a batch that rests. */
interface Check {
  readonly does: "check";
  readonly batch: string;
  readonly palate: string;
  /** Of the whole glass, 0 to 10. */
  readonly strengths: readonly (readonly [attribute: AttributeId, strength: number])[];
}

interface Taste {
  readonly does: "taste";
  readonly flight: FlightScript;
}

/** One line of the diary. Keys such as "lamp" stand for ids that are drawn when the diary is played. */
export type Entry = { readonly at: When } & (
  | Shelve
  | SetOut
  | Pour
  | Undo
  | Write
  | Rewrite
  | Make
  | Remark
  | Lay
  | Check
  | Taste
);
export type EntryThat<D extends Entry["does"]> = Extract<Entry, { does: D }>;
