/** What must stand beside every answer about oak in a vessel. */
export const OAK_CAUTIONS: readonly string[] = [
  "Only untreated, food-grade oak that is sold for drinks: never treated, painted, glued or reclaimed wood.",
  "Glass or steel, never lead crystal: spirit takes up lead.",
  "Strong spirit gives off vapour that burns: no flame or spark near open vessels.",
  "For your own home only, not for sale. Distilling at home is against the law in most countries and is not meant here.",
];

/** What nobody has published, in the words that stand beside a dose. */
export const OAK_NOT_KNOWN =
  "The same area a litre is not the same taste in the same time: small pieces give from every side and along the grain. No published rate for small pieces in spirit was found.";
