import type { ShelfColumn } from "../../protocol/index.ts";
import { HEADINGS } from "./headings.data.ts";

export interface ListColumn {
  readonly heading: string;
  readonly as: ShelfColumn;
  /** Whether the house took it for that, rather than was told. */
  readonly guessed: boolean;
  /** The unit that the heading says: "Size (cl)". */
  readonly unit: string | null;
}

const UNITS: readonly (readonly [RegExp, string])[] = [
  [/\bproof\b/iu, "proof"],
  [/%|\babv\b|\bvol\b|\balc/iu, "%"],
  [/\bml\b|milli/iu, "ml"],
  [/\bcl\b/iu, "cl"],
  [/\boz\b|ounce/iu, "oz"],
  [/\b(?:l|lit(?:er|re)s?)\b/iu, "l"],
];

/** What each column is, by its heading: each thing once, the first heading that says it. */
export function guessColumns(
  headings: readonly string[],
  told: readonly (ShelfColumn | null)[] = [],
): readonly ListColumn[] {
  const taken = new Set<ShelfColumn | null>(told.filter((as) => as !== null && as !== "ignore"));
  return headings.map((heading, n) => {
    const unit = unitOf(heading);
    const said = told[n];
    if (said !== undefined && said !== null) return { heading, as: said, guessed: false, unit };
    const found = meant(heading);
    const as = found === null || taken.has(found) ? "ignore" : found;
    taken.add(as);
    return { heading, as, guessed: true, unit };
  });
}

/** "Proof / ABV" says neither. */
function unitOf(heading: string): string | null {
  const units = UNITS.filter(([words]) => words.test(heading)).map(([, unit]) => unit);
  return units.length === 1 ? (units[0] ?? null) : null;
}

function meant(heading: string): ShelfColumn | null {
  const bare = (text: string): string => text.toLowerCase().replaceAll(/[^\p{L}\p{N}]/gu, "");
  const whole = bare(heading);
  const first = bare(heading.replaceAll(/\(.*?\)|\[.*?\]/gu, ""));
  const entries = Object.entries(HEADINGS) as [ShelfColumn, readonly string[]][];
  for (const text of [whole, first]) for (const [as, words] of entries) if (words.includes(text)) return as;
  const words = heading.toLowerCase().split(/[^\p{L}]+/u);
  for (const [as, known] of entries)
    if (words.some((word) => word.length > 2 && known.includes(word))) return as;
  return null;
}
