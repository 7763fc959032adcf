import { abv20, millilitres20 } from "@partsproof/core/quantity";
import { mix } from "@partsproof/core/alcoholometry";
import type { Contents } from "@partsproof/house/protocol";
import { LABEL_TOLERANCE } from "./label-tolerance.data.ts";
import { stockOfContents } from "./stock.ts";

/**
 * The most that a mixture's strength (% vol) may be off if every label is right to 0.3 % vol: all of them too high or
 * all too low together. Water is exact. Pours of nothing do not count.
 */
export function strengthGive(pours: readonly { readonly ml: number; readonly abv20: number }[]): number {
  const counted = pours.filter((pour) => pour.ml > 0);
  if (counted.length === 0) return 0;
  const at = (shift: number): number =>
    mix(
      counted.map((pour) => ({
        volumeMl: millilitres20(pour.ml),
        abv20: abv20(pour.abv20 === 0 ? 0 : Math.min(100, Math.max(0, pour.abv20 + shift))),
      })),
    ).abv20;
  const middle = at(0);
  return Math.max(at(LABEL_TOLERANCE) - middle, middle - at(-LABEL_TOLERANCE));
}

/** As `strengthGive`, for what a vessel holds; 0 where it is empty. */
export function contentsGive(contents: Contents): number {
  const stock = stockOfContents("", contents);
  return stock === null
    ? 0
    : strengthGive(stock.perMl.map((one) => ({ ml: one.volumeMl, abv20: one.abv20 })));
}

/** Rounded up to the tenth, so that it never claims more than is known: "± 0.3". */
export function printGive(give: number): string {
  return `± ${(Math.ceil(give * 10 - 1e-6) / 10).toFixed(1)}`;
}
