import type { Cask } from "@partsproof/house/protocol";

/** "12 years", "1 year", "4½ years"; "no age stated" for null. */
export function printAge(years: number | null): string {
  if (years === null) return "no age stated";
  const whole = Math.floor(years);
  const half = years - whole === 0.5;
  const digits = half ? `${whole === 0 ? "" : whole}½` : String(years);
  return `${digits} ${years <= 1 && years > 0 ? "year" : "years"}`;
}

/** "virgin American oak", "American oak, held port". */
export function printCask({ species, held }: Cask): string {
  const wood = species === "not known" ? "wood not known" : species;
  if (held === "nothing") return `virgin ${wood}`;
  return held === "not known" ? wood : `${wood}, held ${held}`;
}

/** A share of 0 to 1 in whole per cent; a trace is said to be one. */
export function printShare(share: number): string {
  if (share > 0 && share < 0.005) return "under 1\u00a0%";
  return `${Math.round(share * 100)}\u00a0%`;
}

export function printParts(parts: number): string {
  return parts === 1 ? "1 part" : `${parts} parts`;
}

/** "a", "a and b", "a, b and c". */
export function listed(words: readonly string[]): string {
  return words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;
}
