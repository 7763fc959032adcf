/** What a label says of a whiskey. What it does not say is null, and taken for the usual. */
export interface LabelFacts {
  readonly ageYears: number | null;
  /** Per cent by volume. */
  readonly abv: number;
  readonly kind: string;
  /** Shares of the mash by grain, any unit. */
  readonly grains: Readonly<Record<string, number>> | null;
  /** Wood, and what each cask held before ("nothing" for new wood). */
  readonly casks: readonly { readonly species: string; readonly held: string }[] | null;
}
