/** A recipe in lowest terms, its lines in the shelf's order. */
export type FoundRecipe = {
  readonly parts: readonly { readonly id: string; readonly parts: number }[];
  readonly distance: number;
  /** Distance with the goals added; the distance itself when there are none. */
  readonly score: number;
  /** % vol of the exact mix at 20 °C, before water. */
  readonly abv20: number;
  /** Mean price of a litre poured; null when one of the whiskeys has no price. */
  readonly pricePerLitre: number | null;
  /** Age of the youngest; null when one of the whiskeys has no age. */
  readonly youngestYears: number | null;
  /** Predicted intensity of each of the target's attributes. */
  readonly predicted: Readonly<Record<string, number>>;
};

/** How far a search has come. Below `bound` there is no recipe that is not in the list. */
export type Progress = {
  readonly done: boolean;
  readonly recipes: number;
  readonly best: number | null;
  readonly bound: number;
  readonly gap: number;
  readonly nodes: number;
};

export type SearchResult = {
  readonly recipes: readonly FoundRecipe[];
  /** True when the whole list is proven: no recipe that keeps the rules and is not in it scores lower than its last. */
  readonly provenOptimal: boolean;
  /** No recipe that keeps the rules scores below this. */
  readonly bound: number;
  /** Best score less `bound`; 0 when proven; infinite when no recipe has been found yet. */
  readonly gap: number;
  readonly nodes: number;
  /** Values taken as unknown: 5 of 10, with the spread of an even guess over the scale. */
  readonly unknown: readonly { readonly id: string; readonly attribute: string }[];
};
