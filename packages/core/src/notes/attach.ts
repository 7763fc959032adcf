import { type Draft, isStop, type Mention, type Says, says } from "./mention.ts";

export interface Reach {
  /** Words of no phrase that may stand between. */
  readonly words: number;
  readonly link?: boolean;
  readonly start?: boolean;
  readonly comma?: number;
  readonly stop?: boolean;
}

const THROUGH: readonly Says[] = [
  "glue",
  "degree",
  "amplify",
  "not",
  "less",
  "more",
  "unsure",
  "there",
  "liking",
  "as-much",
  "memory",
  "this",
];
const FURTHEST = 12;

/** The flavour that an item before it speaks of, or undefined where something stands between. */
export function forward(draft: Draft, from: number, reach: Reach): Mention | undefined {
  const { items, at, lexicon } = draft;
  let { words } = reach;
  for (let n = from + 1; n < items.length && n <= from + FURTHEST; n++) {
    const mention = at[n];
    if (mention !== undefined) return mention;
    const item = items[n];
    if (item === undefined || isStop(item)) return undefined;
    const adjectives = graded(draft, n - 1) && graded(draft, n + 1) && at[n + 1] === undefined;
    if (item.mark === "colon") {
      if (!reach.start) return undefined;
    } else if (item.mark === "comma") {
      if (!adjectives && !reach.comma) return undefined;
    } else if (says(item, "join")) {
      if (!adjectives) return undefined;
    } else if (!reach.start && /^(?:it|everything)(?:'s| is| was)\b/.test(item.words)) return undefined;
    else if (lexicon.leaning.has(item.words) || THROUGH.some((kind) => says(item, kind))) continue;
    // "a faint smell of smoke"
    else if (says(item, "where") && (/^of\b/.test(items[n + 1]?.words ?? "") || item.words.endsWith(" of")))
      continue;
    else if (
      says(item, "break") ||
      says(item, "where") ||
      says(item, "gone") ||
      says(item, "aside") ||
      says(item, "length") ||
      says(item, "than")
    )
      return undefined;
    else if (item.words === "its") continue;
    else if (says(item, "link")) {
      if (!reach.link) return undefined;
    } else if (says(item, "start")) {
      if (!reach.start) return undefined;
    } else if (--words < 0) return undefined;
  }
  return undefined;
}

/** The flavour that an item after it speaks of. */
export function backward(draft: Draft, from: number, reach: Reach): Mention | undefined {
  const { items, at } = draft;
  let { words } = reach;
  let commas = reach.comma ?? 0;
  let stops = reach.stop ? 1 : 0;
  for (let n = from - 1; n >= 0 && n >= from - FURTHEST; n--) {
    const mention = at[n];
    if (mention !== undefined) return mention;
    const item = items[n];
    if (item === undefined) return undefined;
    if (item.mark === "blank") return undefined;
    if (item.mark === "stop" || item.mark === "ask") {
      if (stops-- <= 0) return undefined;
    } else if (item.mark !== "" || says(item, "break")) {
      if (commas-- <= 0) return undefined;
    } else if (says(item, "aside") || (says(item, "join") && n !== from - 1)) return undefined;
    else if (
      says(item, "link") ||
      says(item, "glue") ||
      says(item, "where") ||
      says(item, "start") ||
      THROUGH.some((kind) => says(item, kind))
    )
      continue;
    else if (--words < 0) return undefined;
  }
  return undefined;
}

const graded = ({ items, lexicon }: Draft, n: number): boolean =>
  says(items[n], "degree") !== undefined || lexicon.leaning.has(items[n]?.words ?? "");
