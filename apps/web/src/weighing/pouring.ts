import type { ScaleClass, ThermometerClass } from "@partsproof/core/uncertainty";
import type { Pour } from "@partsproof/house/protocol";
import type { Tools } from "../bench/index.ts";

/** The tap, where a source's place in the list would stand. */
export const WATER = -1;

/** One bottle that a part is poured from. */
export interface Source {
  readonly label: string;
  /** Which part of the recipe it is poured for. */
  readonly part: number;
  readonly abv20: number;
  /** Where it comes off the shelf; null at the bench, where no shelf is known. */
  readonly from: Pour["from"] | null;
  /** What it holds by the book, mL at 20 °C; null where nobody knows. */
  readonly haveMl: number | null;
}

/** One thing that happened, in order. */
export type Happening =
  /** `g` is what the scale showed more than before. `source` is a place in the list, or WATER. */
  | { readonly kind: "pour"; readonly source: number; readonly g: number }
  /** The bottle ran dry, or no more of it shall go in. */
  | { readonly kind: "empty"; readonly source: number }
  /** What was decided when a pour went too far or a bottle ran dry. */
  | { readonly kind: "grow" | "drift" | "stop" };

/** A mix being poured by weight: the plan, the bench, and what happened so far. */
export interface Pouring {
  readonly v: 1;
  /** What is being poured, so that another plan is not mistaken for this one. */
  readonly key: string;
  readonly title: string;
  /** The recipe it is poured for and the volume asked, mL; null at the bench. */
  readonly batch: { readonly recipeId: string; readonly finalMl: number } | null;
  /** What each part was planned at, mL at 20 °C before mixing. */
  readonly parts: readonly { readonly label: string; readonly plannedMl: number }[];
  readonly sources: readonly Source[];
  /** Strength to bring it to with water at the end, % vol. */
  readonly waterTo: number | null;
  /** What the vessel holds, mL; null where it has room enough. */
  readonly capacityMl: number | null;
  readonly celsius: number;
  readonly scale: ScaleClass;
  readonly thermometer: ThermometerClass;
  readonly label: Tools["label"];
  /** Zeroed before every pour, or left to run on from `baseG`. */
  readonly tare: "each" | "running";
  readonly baseG: number;
  readonly happened: readonly Happening[];
}

/** One pour as it went in. */
export interface Poured {
  readonly source: number;
  readonly g: number;
  readonly massG: number;
  readonly ml20: number;
}

export interface Next {
  /** A place in the list of sources, or WATER. */
  readonly source: number;
  readonly g: number;
  readonly ml20: number;
  /** As it measures at the bench's temperature. */
  readonly ml: number;
  /** What the scale shows when it is in: `g`, or the running total. */
  readonly showsG: number;
}

/** Where a pouring stands. */
export interface Standing {
  readonly poured: readonly Poured[];
  /** Of each part, mL at 20 °C. */
  readonly pouredMl: readonly number[];
  readonly waterMl: number;
  /** What each part shall come to, mL at 20 °C. */
  readonly goals: readonly number[];
  /** Water that the goals need for the strength, mL at 20 °C; what is poured already included. */
  readonly waterGoalMl: number;
  /** Sources that are empty or done with. */
  readonly empty: ReadonlySet<number>;
  /** Something has to be decided before the next pour. `g` is what is too much, or what is missing. */
  readonly question: { readonly kind: "over" | "short"; readonly source: number; readonly g: number } | null;
  /** null while a question is open, and at the end. */
  readonly next: Next | null;
  readonly finished: boolean;
}

/** As if the last pour, or the last bottle run dry, had not happened, nor what was decided on it. */
export function without(pouring: Pouring): Pouring {
  const last = pouring.happened.findLastIndex(({ kind }) => kind === "pour" || kind === "empty");
  return last === -1 ? pouring : { ...pouring, happened: pouring.happened.slice(0, last) };
}
