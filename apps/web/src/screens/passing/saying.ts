import type { Condition } from "@partsproof/core/slots";
import type { Whiskey } from "@partsproof/house/protocol";

/** A kind of thing that a sentence can say of a line, and the condition it makes. */
export type Saying =
  | { readonly about: "strength" | "age" | "price"; readonly side: "least" | "most"; readonly value: number }
  | {
      readonly about: "grain";
      readonly name: string;
      readonly side: "least" | "most";
      readonly value: number;
    }
  | {
      readonly about: "taste";
      readonly name: string;
      readonly side: "least" | "most";
      readonly value: number;
    }
  | { readonly about: "wood" | "held"; readonly how: "only" | "no" | "some"; readonly name: string }
  | { readonly about: "kind" | "place"; readonly name: string; readonly not: boolean }
  | { readonly about: "other"; readonly what: "distillery" | "maker"; readonly slot: number }
  | { readonly about: "sold" };
export type About = Saying["about"];

export const ABOUTS: readonly { readonly about: About; readonly label: string }[] = [
  { about: "strength", label: "Strength" },
  { about: "age", label: "Age" },
  { about: "kind", label: "Kind" },
  { about: "place", label: "Place" },
  { about: "grain", label: "Grain" },
  { about: "wood", label: "Wood of its casks" },
  { about: "held", label: "What its casks held" },
  { about: "taste", label: "Taste" },
  { about: "price", label: "Price" },
  { about: "other", label: "Beside another line" },
  { about: "sold", label: "Still sold" },
];

const bounds = (side: "least" | "most", value: number) =>
  side === "least" ? { low: value, high: null } : { low: null, high: value };

/** What the sentence asks, as the rule language has it. */
export function conditionOf(saying: Saying): Condition {
  switch (saying.about) {
    case "strength":
    case "age":
    case "price":
      return { about: saying.about, ...bounds(saying.side, saying.value) };
    case "grain":
      return { about: "grainShare", grain: saying.name, ...bounds(saying.side, saying.value) };
    case "taste":
      return { about: "profile", attribute: saying.name, ...bounds(saying.side, saying.value) };
    case "wood":
    case "held":
      return { about: "listed", what: saying.about, how: saying.how, names: [saying.name] };
    case "kind":
    case "place":
      return { about: "named", what: saying.about, not: saying.not, names: [saying.name] };
    case "other":
      return { about: "same", what: saying.what, not: true, slot: saying.slot };
    case "sold":
      return { about: "sold" };
  }
}

/** Where a sentence starts: what the line's own whiskey just keeps, as far as it is known. */
export function startOf(about: About, whiskey: Whiskey | null, slot: number): Saying {
  const grain = whiskey?.grains?.toSorted((a, b) => b.percent - a.percent)[0];
  const cask = whiskey?.casks[0];
  switch (about) {
    case "strength":
      return { about, side: "least", value: whiskey === null ? 50 : Math.floor(whiskey.abv20 / 5) * 5 };
    case "age":
      return { about, side: "least", value: Math.floor(whiskey?.ageYears ?? 4) };
    case "price":
      return { about, side: "most", value: 100 };
    case "grain":
      return {
        about,
        name: grain?.grain ?? "rye",
        side: "least",
        value: grain === undefined ? 51 : Math.floor(grain.percent / 5) * 5,
      };
    case "taste": {
      const said = Object.entries(whiskey?.profile?.intensities ?? {}).flatMap(([id, own]) =>
        own === null ? [] : [[id, typeof own === "number" ? own : own.value] as const],
      );
      const [name, value] = said.toSorted((a, b) => b[1] - a[1])[0] ?? ["sweet.honey", 5];
      return { about, name, side: "least", value: Math.max(0, Math.floor(value) - 1) };
    }
    case "wood":
      return {
        about,
        how: "only",
        name: cask === undefined || cask.species === "not known" ? "American oak" : cask.species,
      };
    case "held":
      return {
        about,
        how: "only",
        name: cask === undefined || cask.held === "not known" ? "bourbon" : cask.held,
      };
    case "kind":
      return { about, name: whiskey?.kind ?? "malt", not: false };
    case "place":
      return { about, name: whiskey?.place?.split(",")[0]?.trim() || "Europe", not: false };
    case "other":
      return { about, what: "distillery", slot: slot === 1 ? 2 : 1 };
    case "sold":
      return { about };
  }
}
