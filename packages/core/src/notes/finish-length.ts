import { aboutFinish, ofFlavour } from "./about-finish.ts";
import { goneBehind } from "./deny.ts";
import type { Item } from "./find-items.ts";
import { graded, much, stanceAt } from "./how-long.ts";
import type { Stance, Where } from "./language.ts";
import { type Draft, is, isPlain, isStop, type SaidSense, says } from "./mention.ts";
import { AFTER, counted, lasts, ofSeconds, secondsAt, standsAlone, waited, WRITTEN } from "./seconds-said.ts";

export interface FinishLength {
  readonly start: number;
  readonly end: number;
  readonly word: string;
  readonly strength: number;
  readonly unsure: boolean;
  readonly stance: Stance;
}

const STAYS = /^(?:linger|stay|last|persist|remain|hang|goes on$|keeps going$|never stops)/;

/** What a note says of how long the finish is: words where a finish is spoken of, words that need none beside them, seconds. */
export function finishLengths(draft: Draft, sections: readonly Where[]): FinishLength[] {
  const { items } = draft;
  const found: (FinishLength & { readonly n: number; readonly stays: boolean })[] = [];
  for (const [n, item] of items.entries()) {
    if (item.mark !== "" || draft.at[n] !== undefined || draft.elsewhere.has(n)) continue;
    const length = lengthSaid(item) ?? missing(draft, n);
    const written = WRITTEN.exec(item.words);
    const seconds = written
      ? Number(written[1])
      : says(item, "seconds")
        ? secondsAt(draft, n)
        : counted(draft, n);
    if (length === undefined && seconds === null) continue;
    // "he goes on and on"
    if (is(items[n - 1], "persons") && seconds === null) continue;
    // "it goes on the list"
    if (/^goes on$/.test(item.words) && /^(?:the|my)$/.test(items[n + 1]?.words ?? "")) continue;
    // "it stays cold"
    const next = items[n + 1];
    if (item.words === "stays" && next !== undefined && isPlain(next) && !next.words.endsWith("ly")) continue;
    // "vinegar on the nose, then nothing"
    if (sections[n] === "nose" && /\bnothing$/.test(item.words)) continue;
    // "I could smell it all night"
    if (sections[n] === "nose" && /^all (?:night|evening)$/.test(item.words)) continue;
    // "about ten seconds after, ginger": when, and not how long.
    if (says(item, "seconds") && AFTER.test(items[n + 1]?.words ?? "") && !lasts(items, n)) continue;
    // "Mid: rye bread", "after some minutes comes the vanilla"
    if (items[n + 1]?.mark === "colon" || waited(items, n)) continue;
    if (item.words.startsWith("still ") && (draft.at[n - 1] !== undefined || ofFlavour(draft, n))) continue;
    // "the pear is still there", "I've washed my hands and it's still there"
    if (/(?:^| )still there$/.test(item.words) && sections[n] !== "finish" && ofSomething(draft, n)) continue;
    // "it's gone all buttery"
    const quite =
      draft.at[n + 1] ??
      (says(items[n + 1], "degree") && draft.at[n + 2]) ??
      (/^(?:all )?to$/.test(`${items[n + 1]?.words}`) || items[n + 2]?.words === "to"
        ? (draft.at[n + 2] ?? draft.at[n + 3])
        : undefined);
    if (quite && /(?:^| )gone$/.test(item.words)) continue;
    if (goneBehind(draft, n) !== undefined) continue;
    // "gone" of a flavour is no length of the finish.
    if (says(item, "gone") && length !== MISSING && takes(items, n)) continue;
    if (
      !length?.alone &&
      !lasts(items, n) &&
      !(seconds !== null && standsAlone(items, n)) &&
      !aboutFinish(draft, n, sections)
    )
      continue;
    if (length && !length.alone && says(items[n + 1], "seconds")) continue;
    const stays = seconds === null && STAYS.test(item.words);
    // "stays hot" says how it is.
    if (
      stays &&
      !item.words.endsWith("ing") &&
      draft.at[n + 1] !== undefined &&
      items[n]?.words.split(" ").length === 1
    )
      continue;
    const little = stays && is(items[n + 1], "smallStay");
    const strength =
      seconds !== null ? ofSeconds(seconds) : little ? 5 : graded(items, n, length?.strength ?? 5);
    const unsure = [n - 1, n - 2, n - 3, n + 1, n + 2].some((m) => says(items[m], "unsure") !== undefined);
    const stance = stanceAt(draft, n, length?.stance);
    if (seconds !== null) found.length = 0;
    const turned = stance !== (length?.stance ?? "present");
    const value = turned ? 10 - strength : much(items, n, stance) ? Math.max(strength, 8) : strength;
    found.push({
      start: item.start,
      end: item.end,
      word: item.words,
      strength: value,
      unsure,
      stance,
      n,
      stays,
    });
  }
  // "stays a bitterness, but short": the word for the length holds.
  const sentence = sentences(items);
  const said = new Set(found.filter(({ stays }) => !stays).map(({ n }) => sentence[n]));
  return found.filter(({ stays, n }) => !stays || !said.has(sentence[n]));
}

/** Which sentence each item is in. */
function sentences(items: readonly Item[]): readonly number[] {
  let sentence = 0;
  return items.map((item) => (isStop(item) ? ++sentence : sentence));
}

/** Of several, the one that needs no finish beside it. */
const lengthSaid = (item: Item): SaidSense | undefined =>
  (item.senses.find((sense) => sense.says === "length" && sense.alone && item.text === "") as
    | SaidSense
    | undefined) ?? says(item, "length");

const MISSING: SaidSense = { says: "length", strength: 0, stance: "absent", alone: true };

/** "Finish: none." */
function missing({ items }: Draft, n: number): SaidSense | undefined {
  if (!is(items[n], "nothings")) return undefined;
  const before = items[n - 1];
  const cue = before?.mark === "colon" || before?.words === "is" ? items[n - 2] : before;
  return says(cue, "where")?.where === "finish" && isStop(items[n + 1]) ? MISSING : undefined;
}

const LATER = /^(?:after|ages|hours?|later|minutes?|now|seconds?|when)\b/;

/** "the pear is still there": of what the sentence speaks of, where no time is said. */
function ofSomething({ items, at }: Draft, n: number): boolean {
  for (let m = n + 1; m < n + 5 && !isStop(items[m]); m++)
    if (says(items[m], "seconds") || LATER.test(items[m]?.words ?? "")) return false;
  let other = false;
  for (let m = n - 1; m >= 0 && !isStop(items[m]); m--) {
    if (says(items[m], "seconds") || LATER.test(items[m]?.words ?? "") || says(items[m], "where"))
      return false;
    other ||= at[m] !== undefined || isPlain(items[m] as Item);
  }
  return other;
}

const takes = (items: readonly Item[], n: number): boolean => {
  const before = items[n - 1];
  // "the finish is gone before I've put the glass down"
  if (says(before, "where")?.where === "finish" && items[n]?.words !== "gone") return false;
  return !(before === undefined || before.mark !== "" || /^(?:it's|it|\d+|and|then)$/.test(before.words));
};
