import type { WordSet } from "./language.ts";

/** English words of a kind that a rule of the reader asks for. How lists are written: language.ts. Common practice, no source. */
export const WORDS: Readonly<Record<WordSet, string>> = {
  qualities: `warmth|heat|burn|tingle|sting|bite|kick|grip|acidity|fizz|astringency`,
  places: `forest|wood|woods|barn|farm|garden|workshop|library|church|chapel|harbour|harbor|dock|quay|beach|hospital|cellar|attic|loft|\
hedge|meadow|lawn|greenhouse|stable|byre|museum|warehouse|bakery|brewery|shop|factory|shed|market|stall`,
  nothings: `none|nil|absent|nothing|zero|nowhere|missing|nowt|zilch|nada|zip`,
  selves: `itself|himself|herself|themselves`,
  people: `folk|folks|people|others|everyone|everybody`,
  articles: `a|an|any|my|hell|the devil`,
};
