import type { WorthsFound } from "@partsproof/house/protocol";

const plural = (count: number, one: string): string => `${count} ${count === 1 ? one : `${one}s`}`;

/** "12 rankings by 4 tasters in 3 flights". */
export const countedWords = ({ sheets, tasters, flights }: WorthsFound["counted"], what: string): string =>
  `${plural(sheets, what)} by ${plural(tasters, "taster")} in ${plural(flights, "flight")}`;

export const twoDigits = (x: number): string => x.toFixed(2).replace("-", "−");
export const oneDigit = (x: number): string => x.toFixed(1).replace("-", "−");
/** Two decimals, and never a certainty. */
export const share = (p: number): string => (p > 0.99 ? "> 0.99" : p < 0.01 ? "< 0.01" : p.toFixed(2));
