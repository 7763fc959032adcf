import type { MixingUsed, SearchAnswer, SearchRecipe } from "@partsproof/house/protocol";
import { type Column, columns } from "./columns.ts";
import { abv, plural } from "./figures.ts";

/** How whiskeys and prices are called: a file has ids and bare numbers, a household labels and a currency. */
export interface Words {
  readonly label: (id: string) => string;
  readonly price: (perLitre: number) => string;
}
export const ofFile: Words = { label: (id) => id, price: (perLitre) => perLitre.toFixed(2) };

/** As a household calls them. */
export const ofHousehold = (labels: {
  readonly names: Readonly<Record<string, string>>;
  readonly currency: string;
}): Words => ({
  label: (id) => labels.names[id] ?? id,
  price: (perLitre) => `${perLitre.toFixed(2)} ${labels.currency}`,
});

export const partsOf = ({ parts }: SearchRecipe, { label }: Words): string =>
  parts.map(({ id, parts: own }) => `${own} ${label(id)}`).join(" + ");

const shown = (words: Words): readonly Column<SearchRecipe>[] => [
  { head: "Distance", cell: ({ distance }) => distance.toFixed(3), right: true },
  { head: "Strength", cell: (recipe) => abv(recipe.abv, 2), right: true },
  {
    head: "A litre",
    cell: ({ pricePerLitre }) => (pricePerLitre === null ? "-" : words.price(pricePerLitre)),
    right: true,
  },
  { head: "Youngest", cell: ({ ageYears }) => (ageYears === null ? "-" : `${ageYears} years`), right: true },
  { head: "Parts", cell: (recipe) => partsOf(recipe, words) },
];

/** Recipes as a table, one a line. */
export const printRecipes = (recipes: readonly SearchRecipe[], words: Words, empty: string): string =>
  columns(recipes, shown(words), empty);

/** What a search found, how far it is proven, and what to make of it. */
export function printSearch(answer: SearchAnswer & Partial<Left>, words: Words = ofFile): string {
  const table = printRecipes(answer.recipes, words, "No recipe found.");
  return [table, "", ...said(answer, words)].join("\n").trimEnd();
}

interface Left {
  readonly mixing: readonly MixingUsed[];
  readonly levels: { readonly from: "shelf" | "learned"; readonly notes: number };
  readonly withoutProfile: readonly { readonly label: string }[];
}

function said(answer: SearchAnswer & Partial<Left>, words: Words): readonly string[] {
  return [
    provenWords(answer),
    ...conflictWords(answer, words),
    ...apartWords(answer),
    ...unknownWords(answer, words),
    ...unusedWords(answer),
    ...mixingWords(answer),
    ...(answer.levels?.from === "learned"
      ? [
          `Whiskeys by what was learned of them, from ${plural(answer.levels.notes, "note")} of revealed flights.`,
        ]
      : []),
    ...leftWords(answer),
  ];
}

function provenWords({ recipes, provenOptimal, gap }: SearchAnswer): string {
  if (!provenOptimal && gap === null) return "Stopped by time before a recipe was found; there may be some.";
  if (!provenOptimal)
    return `Stopped by time: the closest there is may be closer than the first by ${(gap ?? 0).toFixed(3)}, and no more.`;
  if (recipes.length === 0) return "Proven: no recipe keeps the rules.";
  return "Proven: no recipe that is not listed is closer than the last.";
}

function conflictWords(answer: SearchAnswer, words: Words): readonly string[] {
  const { conflict, conflictProven, nearest } = answer;
  if (conflict === undefined) return [];
  const sure = conflictProven === false ? " (likely; to prove it took too long)" : "";
  const rules = conflict.length === 0 ? "there is nothing to pour" : conflict.join(", ");
  const near = nearest
    ? [`Nearest: ${partsOf(nearest.recipe, words)}, which breaks ${nearest.breaks.join(", ")}.`]
    : [];
  return [`Cannot stand together: ${rules}${sure}.`, ...near];
}

function apartWords({ cannotTellApart, recipes }: SearchAnswer): readonly string[] {
  if (cannotTellApart < 2) return [];
  const all = cannotTellApart === recipes.length ? "these" : `${cannotTellApart} of these`;
  return [
    `On what is known the first is not surely closer than ${all}: less than 9 in 10. Try them in one flight.`,
  ];
}

function unknownWords({ unknown }: SearchAnswer, { label }: Words): readonly string[] {
  if (unknown.length === 0) return [];
  const whiskeys = [...new Set(unknown.map(({ id }) => id))];
  const named = whiskeys.slice(0, 5).map(label).join(", ");
  const more = whiskeys.length > 5 ? ` and ${whiskeys.length - 5} more` : "";
  return [
    `Taken as 5 of 10, give or take 2.9, because nobody has said: ${plural(unknown.length, "value")} of ${named}${more}.`,
  ];
}

const unusedWords = ({ unusedWeights }: SearchAnswer): readonly string[] =>
  unusedWeights.length === 0
    ? []
    : [`Weights of attributes the target has not count for nothing: ${unusedWeights.join(", ")}.`];

/** Where a household's own mixes speak against the mean of the parts. */
const mixingWords = ({ mixing = [] }: Partial<Left>): readonly string[] =>
  mixing.map(({ sentence, used }) => `${used ? "Gone by" : "Learned, but not gone by"}: ${sentence}.`);

const leftWords = ({ withoutProfile = [] }: Partial<Left>): readonly string[] =>
  withoutProfile.length === 0
    ? []
    : [
        `Left out, because nobody has said what it tastes of: ${withoutProfile.map(({ label }) => label).join(", ")}.`,
      ];
