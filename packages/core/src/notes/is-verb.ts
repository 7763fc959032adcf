import { caskActs } from "./cask-acts.ts";
import type { Item } from "./find-items.ts";
import { opensAlone } from "./it-opens.ts";
import { lampLight } from "./lamp-light.ts";
import { type Draft, is, isPlain, isStop, says } from "./mention.ts";

/** "the pepper bites", "folded round its", "gone soft": a word of feel or of the whole that is a verb, or stands after one. */
export function isVerb({ items, at: mentions, lexicon }: Draft, at: number): boolean {
  const item = items[at];
  if (item === undefined) return false;
  if (is(item, "bites") && mentions[at - 1] !== undefined) return true;
  // "we closed with this one", "he buttered me up"
  if (
    item.text.endsWith("ed") &&
    is(items[at - 1], "storyTellers") &&
    /^[a-z]+$/.test(items[at - 1]?.words ?? "")
  )
    return true;
  // "a big fat nose"
  if (item.text === "fat" && items[at + 1]?.mark === "" && says(items[at + 1], "where")?.form === "head")
    return true;
  // "apricots drying on a roof"
  if (item.text === "drying" && mentions[at - 1] !== undefined && is(items[at + 1], "liesOn")) return true;
  // "the road was being tarred"
  if (item.text.endsWith("ed") && items[at - 1]?.words === "being") return true;
  // "a lime cut open"
  if (
    item.text === "open" &&
    /^(?:broken|cracked|cut|flung|prised|split|torn|wide)$/.test(items[at - 1]?.words ?? "")
  )
    return true;
  // "when you open it"
  if (item.text === "open" && is(items[at - 1], "burners")) return true;
  // "the mint that bites"
  if (is(item, "bites") && is(items[at - 1], "relative") && mentions[at - 2] !== undefined) return true;
  // "hung up to dry"
  if (item.text === "dry" && items[at - 1]?.words === "to") return true;
  // "it dries itself at the hearth"
  if (item.text.endsWith("s") && is(items[at + 1], "selves")) return true;
  // "put out the light"
  const after = items[at + 1];
  if (
    item.text === "light" &&
    items[at - 1]?.words === "the" &&
    (after?.mark !== "" || says(after, "link") || says(after, "where"))
  )
    return true;
  // "the pale green of the hedge", "the wood of a sauna when it is hot"
  if (item.text === "green" && is(items[at + 1], "of") && items[at + 1]?.mark === "") return true;
  if (/^(?:hot|warm|cold|wet|dry)$/.test(item.text) && WHEN.test(wordsBefore(items, at))) return true;
  if (item.text === "biting" && items[at + 1]?.words === "through") return true;
  // "ginger still biting"
  if (
    item.text === "biting" &&
    mentions[at - 2] !== undefined &&
    /^(?:really|still)$/.test(items[at - 1]?.words ?? "")
  )
    return true;
  // "it opens like a drawer", "it opens with lemon"
  if (/^(?:it )?opens(?: up)?$/.test(item.words) && !opensAlone(items, at)) return true;
  // "what the cask has said to the grain"
  if (caskActs(items, at)) return true;
  // "late light through the blinds", "a light in the window"
  if (item.text === "light" && lampLight(items, at)) return true;
  // "as it warms in the hand"
  if (
    is(item, "warms") &&
    ((items[at - 1]?.words ?? "").startsWith("as it") ||
      /^in the (?:hand|glass)/.test(
        `${items[at + 1]?.words} ${items[at + 2]?.words} ${items[at + 3]?.words}`,
      ))
  )
    return true;
  // "when you burn the jam"; not "to burn the throat"
  if (item.text === "burn" && is(items[at - 1], "burners") && is(items[at + 1], "determiners")) return true;
  // "the match burns down"
  if (item.text === "burns" && is(items[at + 1], "burnsDown")) return true;
  if (
    is(item, "turned") &&
    is(items[at + 1], "determiners") &&
    !says(items[at + 1], "degree") &&
    !says(items[at + 2], "degree")
  )
    return true;
  // "a path drying", "nets drying"
  if (is(item, "participles") && items[at - 1] !== undefined) {
    const before = items[at - 1] as Item;
    if (isPlain(before) && !before.words.endsWith("ly") && !is(before, "beforeParticiple")) return true;
  }
  // "kelp burning on the beach"
  if (is(item, "dryingBurning") && mentions[at - 1] !== undefined && is(items[at + 1], "somewhere"))
    return true;
  if (item.text === "leaves" && is(items[at + 1], "leavesWhat")) return true;
  if (item.text === "leaves" && is(items[at - 1], "leavers")) return true;
  if (item.text === "round" && is(items[at - 1], "roundAfter")) return true;
  // "the smoke has gone soft", but "it's gone sour" of all
  const ofAll =
    /^(?:it|it's|it has)$/.test(items[at - 2]?.words ?? "") ||
    /^it(?:'s| has)? /.test(items[at - 1]?.words ?? "");
  return !item.more && !ofAll && lexicon.leaning.has(item.words) && is(items[at - 1], "becoming");
}

const WHEN = /\bwhen (?:it is|it's)$/;

const wordsBefore = (items: readonly Item[], at: number): string =>
  `${items[at - 3]?.words} ${items[at - 2]?.words} ${items[at - 1]?.words}`;

/** "medium" where the length of the finish is meant. */
export function isLength(items: readonly Item[], at: number): boolean {
  if (says(items[at], "length") === undefined) return false;
  for (let near = at - 4; near < at; near++) if (is(items[near], "bodies")) return false;
  for (let near = at - 9; near <= at + 3; near++) {
    if (near < at && isStop(items[near])) continue;
    const where = says(items[near], "where");
    if (where?.where === "finish") return true;
  }
  return false;
}
