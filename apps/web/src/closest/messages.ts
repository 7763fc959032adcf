import type {
  Conflict,
  FoundRecipe,
  PriceOfRule,
  Problem,
  Purchase,
  SearchResult,
} from "@partsproof/core/blending";
import type { ShelfWhiskey, Traded, TradeOff } from "@partsproof/core/blending";

/** A recipe as the page shows it. */
export interface Shown extends Omit<FoundRecipe, "predicted"> {
  /** Predicted intensities, in the order of the target's attributes: many numbers on their way, as cheap as can be. */
  readonly predicted: Float64Array;
  /** Its parts in one text: steady while the list around it changes. */
  readonly key: string;
  /** Distance to expect with how unsure the profiles are. */
  readonly expected: number;
}

/** What is told at once: the closest, and how sure that is. Small, as a page that draws it while a finger moves has little time. */
export interface Told {
  /** Which question this answers. */
  readonly turn: number;
  readonly done: boolean;
  /** null: nothing keeps the rules, or nothing is found yet. */
  readonly best: Shown | null;
  readonly gap: number;
  readonly nodes: number;
  /** What the search took so far, in ms of the worker's own time. */
  readonly tookMs: number;
}

/** All that a search knows at one moment: it follows once nothing new is asked for a while. */
export interface Found extends Told {
  readonly recipes: readonly Shown[];
  readonly unknown: SearchResult["unknown"];
  /** Those the first cannot be told from on what is known, itself among them, by their keys; none until the search is done. */
  readonly alike: readonly string[];
  /** Those that are unlike the ones before them in a quarter of the glass at least, by their keys. */
  readonly unlike: readonly string[];
}

export type FromSearch =
  | { readonly kind: "told"; readonly told: Told }
  | { readonly kind: "found"; readonly found: Found };

export type ToSearch =
  | {
      readonly kind: "search";
      readonly turn: number;
      readonly problem: Omit<Problem, "whiskeys">;
      /** null: the same as before. */
      readonly whiskeys: Problem["whiskeys"] | null;
      readonly top: number;
    }
  | { readonly kind: "stop" };

/** What else can be asked of whatever search stands on the page. */
export type Wish =
  | { readonly kind: "conflict" }
  | { readonly kind: "prices" }
  | { readonly kind: "trade"; readonly traded: Traded }
  | { readonly kind: "buy" };

/** A wish and the search it is about. It may take long; each is one message to a worker of its own. */
export type Why =
  | { readonly kind: "conflict"; readonly problem: Problem }
  | { readonly kind: "prices"; readonly problem: Problem }
  | { readonly kind: "trade"; readonly problem: Problem; readonly traded: Traded }
  | {
      readonly kind: "buy";
      readonly problem: Problem;
      readonly candidates: readonly ShelfWhiskey[];
      readonly top: number;
    };

export type Because =
  | { readonly kind: "conflict"; readonly conflict: Conflict | null }
  | { readonly kind: "prices"; readonly prices: readonly PriceOfRule[] }
  | { readonly kind: "trade"; readonly traded: Traded; readonly tradeOff: TradeOff }
  | {
      readonly kind: "buy";
      readonly purchases: readonly Purchase[];
      readonly neverNeeded: readonly string[];
      readonly top: number;
    };
