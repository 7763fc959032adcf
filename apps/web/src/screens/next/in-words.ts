import type { Parts } from "@partsproof/core/learning";

export type Names = Readonly<Record<string, string>>;

/** Ids in a sentence as names; whole ids only, as one may stand inside another. */
export const withNames = (sentence: string, names: Names): string =>
  sentence.replace(/[0-9a-z]{26}/g, (id) => names[id] ?? id);

/** A recipe as "2 parts of this, 1 of that"; the most first. */
export function partsInWords(parts: Parts, names: Names): string {
  const lines = Object.entries(parts)
    .filter(([, part]) => part > 0)
    .toSorted(([, a], [, b]) => b - a);
  const [only] = lines;
  if (lines.length === 1 && only !== undefined) return `${names[only[0]] ?? only[0]} alone`;
  return lines
    .map(
      ([id, part], i) =>
        `${part}${i === 0 ? (part === 1 ? " part of" : " parts of") : " of"} ${names[id] ?? id}`,
    )
    .join(", ");
}

/** Chances are never told as certain. */
export const inHundred = (chance: number): string =>
  Math.min(99, Math.max(1, Math.round(100 * chance))).toFixed(0);

/** A log worth with its spread, signed. */
export function worthInWords(mean: number, sd: number): string {
  const sign = mean < -0.05 ? "−" : mean > 0.05 ? "+" : "";
  return `${sign}${Math.abs(mean).toFixed(1)} ± ${sd.toFixed(1)}`;
}
