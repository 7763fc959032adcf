import { is, type Draft, type Mention, says } from "./mention.ts";

/** What "A and B" share: a degree, a "more", a hedge before both; a "no" before "A or B". */
export function carryOver(draft: Draft): void {
  const { mentions } = draft;
  for (const [n, mention] of mentions.entries()) {
    const before = mentions[n - 1];
    if (before === undefined || before.dropped) continue;
    const join = joined(draft, before, mention);
    if (join === null) continue;
    const list = join === "comma" ? finalJoin(draft, n) : join;
    if (before.not && !mention.not && list === "or") mention.not = true;
    if (before.unsure && (list === "and" || list === "or")) mention.unsure = true;
    if (join !== "and" && join !== "or") continue;
    if (mention.degrees.length === 0 && before.degrees.length > 0 && firstOf(draft, n - 1))
      mention.degrees = before.degrees;
    if (before.more && !mention.less && !draft.items[before.at]?.more) mention.more = true;
    if (before.less && !mention.more && !draft.items[before.at]?.more) mention.less = true;
  }
  for (let n = mentions.length - 1; n > 0; n--) {
    const mention = mentions[n];
    const before = mentions[n - 1];
    if (!mention || !before || joined(draft, before, mention) !== "and") continue;
    // "the smoke and the peat have gone"
    if (mention.gone && !before.not && plural(draft, mention)) before.gone = true;
  }
}

const plural = ({ items }: Draft, { last }: Mention): boolean => is(items[last + 1], "plural");

/** Whether nothing but a comma or one join, and small words, stands between two flavours. */
function joined({ items, lexicon }: Draft, a: Mention, b: Mention): "and" | "or" | "with" | "comma" | null {
  // "vanilla coconut"; not "watery honey"
  if (b.at === a.last + 1) return a.inherent !== null && b.inherent === null ? null : "and";
  let found: "and" | "or" | "with" | "comma" | null = null;
  for (let n = a.last + 1; n < b.at; n++) {
    const item = items[n];
    const join = says(item, "join")?.join;
    if (item?.mark === "comma") found ??= "comma";
    // "lashings of toffee, and behind it a lavender": the degree is of the first alone.
    else if (join !== undefined) found = found === "comma" && join === "and" ? "comma" : join;
    else if (item === undefined || item.mark !== "") return null;
    else if (!says(item, "glue") && !lexicon.leaning.has(item.words)) return null;
  }
  return found;
}

/** How a list with commas ends: "peat, smoke or ash". */
function finalJoin(draft: Draft, n: number): "and" | "or" | "with" | "comma" {
  for (let at = n + 1; at < Math.min(draft.mentions.length, n + 8); at++) {
    const [a, b] = [draft.mentions[at - 1], draft.mentions[at]];
    const join = a && b ? joined(draft, a, b) : null;
    if (join === null) return "comma";
    if (join !== "comma") return join;
  }
  return "comma";
}

/** A degree before a list with commas is of the first only. */
function firstOf(draft: Draft, n: number): boolean {
  const [before, here] = [draft.mentions[n - 1], draft.mentions[n]];
  return !before || !here || joined(draft, before, here) === null || before.degrees !== here.degrees;
}
