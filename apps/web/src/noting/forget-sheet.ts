import { forgetNoting } from "./kept-noting.ts";
import { forgetWords } from "./kept-words.ts";

/** A sheet that is locked, or whose flight is over or called off: nothing of its words stays on the phone. */
export function forgetSheet(sheet: string): void {
  forgetNoting(sheet);
  forgetWords(sheet);
}
