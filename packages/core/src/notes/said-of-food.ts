import { isFlavour, type Item } from "./find-items.ts";
import { is, type Draft, isPlain, isStop, says } from "./mention.ts";

const NEAR = 6;

const isOf = (item: Item | undefined, kind: RegExp): boolean =>
  item?.senses.some((sense) => sense.says === "flavour" && sense.attributes.some((id) => kind.test(id))) ??
  false;

/** Whether a flavour's word only says how another is, or what part of it: "toasted bread, a bit burned", "the stone of the cherry". */
export function saidOfFood(draft: Draft, at: number): boolean {
  const { items, at: mentions, lexicon } = draft;
  const item = items[at];
  if (item === undefined) return false;
  const next = items[at + 1];
  const open = next !== undefined && next.mark === "";
  const before = mentions[at - 1] ?? (items[at - 1]?.mark === "comma" ? mentions[at - 2] : undefined);
  if (is(item, "stones"))
    return near(items, at, -1, /^fruit\.stone$/) || near(items, at, 1, /^fruit\.stone$/);
  if (is(item, "charred"))
    return (
      (/^(?:bit|top|edge|corner|crust)s?$/.test(next?.words ?? "") &&
        mentions.some((one) => one && one.at > at - 9)) ||
      near(items, at, -1, /^grain\.bake$/) ||
      (before !== undefined && isOf(items[at - 1], /^sweet\.sugar/))
    );
  if (is(item, "dusty"))
    return open && (isPlain(next) || /^(?:like|dry)$/.test(next.words)) && !is(next, "ofFeel");
  if (is(item, "salted")) return before?.attributes.some((id) => id.startsWith("sweet")) ?? false;
  if (is(item, "sea")) return saltAs(draft, at);
  if (is(item, "warm")) {
    if (open && next.words === "from") return true;
    return (
      (!open || says(next, "join") !== undefined) &&
      (before?.attributes.some((id) => /^(?:sweet\.dairy|grain)/.test(id)) ?? false)
    );
  }
  // "the resin sharp as a bell"
  if (
    open &&
    before !== undefined &&
    /^as a\b/.test(`${next.words} ${items[at + 2]?.words ?? ""}`) &&
    isOf(item, /^whole/)
  )
    return true;
  // "cherries again, sour ones"
  if (open && is(next, "ones") && isOf(item, /^taste/))
    return near(items, at, -1, /^(?:fruit|nut|plant|sweet\.cocoa)/);
  // "the jam of plums"
  return (
    open &&
    lexicon.tails.has(item.text) &&
    is(next, "ofThe") &&
    [2, 3].some((step) => isOf(items[at + step], /^(?:fruit|nut)/) && isFlavour(items[at + step] as Item))
  );
}

function near(items: readonly Item[], at: number, step: number, kind: RegExp): boolean {
  for (let n = at + step; n >= 0 && n < items.length && Math.abs(n - at) <= NEAR; n += step) {
    if (isStop(items[n])) return false;
    if (isOf(items[n], kind)) return true;
  }
  return false;
}

/** "salt as the sea" is salt. */
function saltAs({ items, at: mentions }: Draft, at: number): boolean {
  // "salty, like when you've been swimming in the sea"
  let likened = false;
  for (let m = at - 1; m > at - 14 && !isStop(items[m]); m--) {
    likened ||= /\blike\b/.test(items[m]?.words ?? "");
    if (mentions[m] !== undefined) {
      if (likened && mentions[m]?.word.startsWith("salt")) return true;
      break;
    }
  }
  let n = at - 1;
  while (n > at - 4 && is(items[n], "asThe")) n--;
  return n < at - 1 && (mentions[n]?.word ?? "").startsWith("salt");
}
