import { type Draft, isStop, says } from "./mention.ts";

/** Leaves out what is not of this glass: hoped for, said by others, eaten, how it looks, another glass. */
export function leaveOut(draft: Draft): void {
  const { items } = draft;
  for (const [n, item] of items.entries()) {
    if (item.mark !== "" || draft.at[n] !== undefined) continue;
    const aside = says(item, "aside");
    if (aside) drop(draft, n, aside.look === true);
    if (says(item, "said-before")) drop(draft, n, false);
    otherGlass(draft, n);
  }
}

/** From an item to the end of what it speaks of. */
function drop({ items, at }: Draft, from: number, look: boolean): void {
  let seen = false;
  for (let n = from + 1; n < items.length && n < from + 30; n++) {
    const item = items[n];
    if (item === undefined || isStop(item)) return;
    if (says(item, "break") || says(item, "where")) return;
    if (item.mark === "comma" && !look && !(seen && at[n + 1])) return;
    if (seen && says(item, "start")) return;
    const mention = at[n];
    if (mention) {
      mention.dropped = true;
      seen = true;
    }
  }
}

const CODE = /^\d{1,3}$/;

function otherGlass(draft: Draft, n: number): void {
  const { items, at } = draft;
  const item = items[n];
  if (item === undefined) return;
  const numbered =
    CODE.test(item.words) &&
    (items[n - 1]?.words === "glass" || items[n - 1]?.words === "number" || item.words.length === 3);
  if (!numbered && !says(item, "other")) return;
  const first =
    numbered && items[n - 1]?.mark === "" && /^(?:glass|number)$/.test(items[n - 1]?.words ?? "") ? n - 1 : n;
  const before = [items[first - 1], items[first - 2]];
  const compared = before.some(
    (one, steps) =>
      one !== undefined &&
      says(one, "than") &&
      (steps === 0 || says(items[first - 1], "glue") || says(items[first - 1], "link")),
  );
  if (compared) {
    mark(draft, first);
    drop(draft, n, false);
    return;
  }
  const next = items[n + 1];
  const after = /^(?:was|had|were)$/.test(next?.words ?? "");
  const subject = says(item, "other") ? next !== undefined && next.mark === "" : after;
  if (!subject || (numbered && !after)) return;
  for (let m = n + 1; m < items.length && m < n + 20; m++) {
    const one = items[m];
    if (one === undefined || isStop(one) || says(one, "this") || says(one, "break") || one.mark === "comma")
      return;
    const mention = at[m];
    if (!mention) continue;
    // "the last one had more smoke": here there is less.
    if (mention.more || mention.less) [mention.more, mention.less] = [mention.less, mention.more];
    else mention.dropped = true;
    mention.compared = true;
  }
}

/** What stands before "than the last one" is said against another glass. */
function mark({ items, at }: Draft, from: number): void {
  for (let n = from - 1; n >= 0 && n > from - 10 && !isStop(items[n]); n--) {
    const mention = at[n];
    if (mention) mention.compared = true;
  }
}
