import type { RecipeFile } from "../../protocol/index.ts";
import type { Amounts } from "./amounts.ts";
import type { Square } from "./square.ts";
import type { RecipeWords } from "./words.ts";

/** All that a way of passing a recipe on is made of. */
export interface Passed {
  readonly recipe: RecipeFile;
  readonly words: RecipeWords;
  readonly amounts: Amounts;
  readonly bottleMl: number;
  readonly link: string;
  /** Null where the link is too long for one. */
  readonly square: Square | null;
  readonly canonical: string;
  readonly sha256: string;
}
