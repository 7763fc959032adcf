import { goneBehind } from "./deny.ts";
import type { Item } from "./find-items.ts";
import type { Stance, Where } from "./language.ts";
import { is, type Draft, isPlain, isStop, type SaidSense, says } from "./mention.ts";

export interface FinishLength {
  readonly start: number;
  readonly end: number;
  readonly word: string;
  readonly strength: number;
  readonly unsure: boolean;
  readonly stance: Stance;
}

const AFTER = /^(?:after|afterwards|later)$/;
const WRITTEN = /^(\d{1,3})(?:s|sec|secs)$/;
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

/** "the other had a longer finish": here it is shorter. */
function stanceAt({ items, elsewhere }: Draft, n: number, stance: Stance | undefined): Stance {
  if (stance === undefined) return "present";
  const turned = [n - 1, n - 2, n - 3].some((m) => elsewhere.has(m) && !isStop(items[m]));
  return turned && stance !== "absent" ? (stance === "more" ? "less" : "more") : stance;
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

/** "the pear is": a flavour and what links it stand right before. */
function ofFlavour({ items, at }: Draft, n: number): boolean {
  let m = n - 1;
  while (m >= 0 && says(items[m], "link") && !says(items[m], "start")) m--;
  return m < n - 1 && at[m] !== undefined && at[m]?.attributes.every((id) => id !== "time.finish") === true;
}

const takes = (items: readonly Item[], n: number): boolean => {
  const before = items[n - 1];
  // "the finish is gone before I've put the glass down"
  if (says(before, "where")?.where === "finish" && items[n]?.words !== "gone") return false;
  return !(before === undefined || before.mark !== "" || /^(?:it's|it|\d+|and|then)$/.test(before.words));
};

/** A time that passed before something came, and not how long it stays. */
function waited(items: readonly Item[], n: number): boolean {
  if (!says(items[n], "seconds") || lasts(items, n)) return false;
  for (let m = n - 1; m >= 0 && m >= n - 4 && items[m]?.mark === ""; m--)
    if (is(items[m], "waiting")) return !says(items[m - 1], "length") && !says(items[m - 1], "there");
  return false;
}

/** "gone in ten seconds" */
function lasts(items: readonly Item[], n: number): boolean {
  if (!says(items[n], "seconds") && !items[n - 2]?.words.startsWith("count")) return false;
  for (let m = n - 1; m >= 0 && m >= n - 5; m--)
    if (
      /\b(?:gone|lasts?|lasted|over|counted|count|stays?|remains?|lingers|persists)\b/.test(
        items[m]?.words ?? "",
      )
    )
      return true;
  return false;
}

/** "oily, 20 secs" */
function standsAlone(items: readonly Item[], n: number): boolean {
  let m = n - 1;
  while (/^\d+(?:\.\d)?$/.test(items[m]?.words ?? "") || is(items[m], "aboutSo")) m--;
  const after = items[n + 1];
  return (
    (m < n - 1 || WRITTEN.test(items[n]?.words ?? "")) &&
    (items[m] === undefined || items[m]?.mark !== "") &&
    (after === undefined || after.mark !== "")
  );
}

/** "a long, warm, spicy finish" */
function leadsToFinish({ items, at }: Draft, n: number): boolean {
  for (let m = n + 1; m < items.length && m < n + 9; m++) {
    const item = items[m];
    if (item === undefined || isStop(item)) return false;
    const where = says(item, "where");
    if (where !== undefined) return where.where === "finish";
    // "a long dusk of a finish"
    if (isPlain(item) && items[m + 1]?.words === "of" && items[m + 2]?.words === "a") m += 2;
    else if (
      at[m] ||
      item.mark === "comma" ||
      says(item, "join") ||
      says(item, "degree") ||
      says(item, "liking") ||
      says(item, "unsure")
    )
      continue;
    return false;
  }
  return false;
}

/** "it is so short." */
function saysIt(items: readonly Item[], n: number): boolean {
  if (!is(items[n], "lengths")) return false;
  const after = items[n + 1];
  // "and it's long and I want more"
  const goesOn = says(after, "join") !== undefined && says(items[n + 2], "start") !== undefined;
  if (
    after !== undefined &&
    after.mark === "" &&
    !says(after, "than") &&
    !says(after, "break") &&
    !goesOn &&
    !items[n]?.words.endsWith(" than")
  )
    return false;
  let m = n - 1;
  while (m >= 0 && (says(items[m], "degree") || is(items[m], "beforeLength"))) m--;
  return is(items[m], "it");
}

/** "It fades rather quickly." */
const itGoes = (items: readonly Item[], n: number): boolean =>
  / /.test(items[n]?.words ?? "") &&
  is(
    items
      .slice(Math.max(0, n - 5), n)
      .findLast(
        (item) => !(says(item, "link") || says(item, "glue") || says(item, "unsure")) || is(item, "itGoes"),
      ),
    "itGoes",
  ) &&
  (items[n + 1] === undefined || items[n + 1]?.mark !== "" || says(items[n + 1], "break") !== undefined);

/** "oak, drying, very long", "some oak not very long", "pepper half a minute": a length by itself behind flavours. */
function endsList({ items, at }: Draft, n: number): boolean {
  const words = items[n]?.words ?? "";
  if (!says(items[n], "seconds") && (/^\w+s\b/.test(words) || is(items[n], "goes"))) return false;
  let m = n - 1;
  while (
    says(items[m], "degree") ||
    says(items[m], "amplify") ||
    says(items[m], "not") ||
    is(items[m], "beforeLength") ||
    is(items[m], "aboutSo") ||
    /^\d+$/.test(items[m]?.words ?? "")
  )
    m--;
  if (items[m]?.mark === "comma" || says(items[m], "join")) m--;
  return at[m] !== undefined;
}

/** No flavour from here to the end of the sentence. */
function bare({ items, at }: Draft, n: number): boolean {
  for (let m = n + 1; m < items.length && m < n + 6; m++) {
    if (isStop(items[m])) return true;
    if (at[m] || (items[m]?.mark !== "" && items[m]?.mark !== "comma")) return false;
  }
  return n + 6 >= items.length;
}

/** Whether a cue of the finish, or a word of going, stands close by in the same part of the sentence. */
function beside({ items }: Draft, n: number): boolean {
  for (const step of [-1, 1])
    for (let m = n + step; m >= 0 && Math.abs(m - n) <= (step < 0 ? 6 : 3); m += step) {
      const item = items[m];
      if (item === undefined || item.mark !== "") break;
      if (says(item, "where")?.where === "finish" || is(item, "goes")) return true;
    }
  return false;
}

/** Behind a cue of the finish and nothing but how many. */
function counts(items: readonly Item[], n: number): boolean {
  let m = n - 1;
  while (m > n - 6 && items[m]?.mark === "" && !says(items[m], "where")) m--;
  return says(items[m], "where")?.where === "finish";
}

/** Whether the length is of the finish: in its section, or in a sentence that names it. */
function aboutFinish(draft: Draft, n: number, sections: readonly Where[]): boolean {
  const { items, at } = draft;
  if (leadsToFinish(draft, n)) return true;
  const length = says(items[n], "length");
  if (length && (saysIt(items, n) || (itGoes(items, n) && !ofFlavour(draft, n)))) return true;
  // "Sweeter. Quick."
  if (length?.form === "beside" && isStop(items[n - 1]) && isStop(items[n + 1]) && (length.strength ?? 5) < 5)
    return true;
  if (length?.form === "beside") {
    let m = n - 1;
    while (says(items[m], "degree") || says(items[m], "amplify")) m--;
    const joined = says(items[m], "join") !== undefined || items[m]?.mark === "comma";
    return beside(draft, n) || (sections[n] === "finish" && joined && (items[n + 1]?.mark ?? "stop") !== "");
  }
  const next = items[n + 1];
  if (next !== undefined && next.mark === "" && (at[n + 1] || says(next, "idiom"))) {
    // "finish about twenty seconds dry"
    if (says(items[n], "seconds") && counts(items, n)) return true;
    if (!length || sections[n] !== "finish") return false;
  }
  if (sections[n] === "finish") return true;
  // "short & clean."
  const joined =
    says(items[n + 1], "join") !== undefined &&
    at[n + 2] !== undefined &&
    (items[n + 3]?.mark ?? "stop") !== "";
  if (length && joined && isStop(items[n - 1])) return true;
  const [before, after] = [items[n - 1], items[n + 1]];
  const marked = (item: Item | undefined): boolean => item === undefined || item.mark !== "";
  if (marked(before) && marked(after) && length && (isStop(before) || isStop(after))) return true;
  // "oak very drying very long"
  if (isStop(after) && endsList(draft, n)) return true;
  // "Thankfully brief."
  if (length && isStop(after) && isStop(items[n - 2]) && before?.mark === "" && !at[n - 1]) return true;
  // "Tails off rather sharply."
  if (isStop(before) && length && length.strength !== undefined && length.strength < 5 && bare(draft, n))
    return true;
  for (let m = n + 1; m < items.length && m < n + 12 && !isStop(items[m]); m++)
    if (says(items[m], "where")) return says(items[m], "where")?.where === "finish";
  return false;
}

/** "much longer" */
const much = (items: readonly Item[], n: number, stance: Stance): boolean =>
  stance === "more" && is(items[n - 1], "muchMore");

/** "not long", "not a very long finish", "not particularly long" */
function denied(items: readonly Item[], n: number): boolean {
  for (let m = n - 1; m >= n - 3; m--) {
    if (says(items[m], "not") || says(items[m], "less")) return true;
    if (!says(items[m], "degree") && !is(items[m], "articles")) return false;
  }
  return false;
}

function graded(items: readonly Item[], n: number, strength: number): number {
  const before = items[n - 1];
  if (denied(items, n)) return strength > 5 ? 2.5 : 5;
  const degree = says(before, "degree");
  if (degree?.strength === undefined) return strength;
  if (says(before, "amplify"))
    return strength > 5 ? Math.min(10, strength + 0.8) : Math.max(0.5, strength - 0.7);
  if (is(before, "plainly")) return strength;
  if (degree.strength > 4 && degree.strength < 6 && strength > 7) return 6;
  if (degree.strength < 4 && strength > 6) return 6;
  return strength;
}

/** "I counted to twelve" */
function counted({ items, lexicon }: Draft, n: number): number | null {
  const words = items[n]?.words ?? "";
  const before = items[n - 1]?.words;
  const count = before === "to" ? items[n - 2]?.words : before;
  if (!/^(?:counted|count|counting)(?: to)?$/.test(count ?? "") || says(items[n + 1], "seconds")) return null;
  if (/^\d{1,3}$/.test(words)) return Number(words);
  return Object.hasOwn(lexicon.language.numbers, words) ? (lexicon.language.numbers[words] ?? null) : null;
}

/** "forty five seconds", "half a minute", "fifteen to twenty", "five or six". */
function secondsAt({ items, lexicon }: Draft, n: number): number | null {
  const unit = says(items[n], "seconds")?.unit ?? 1;
  const { numbers } = lexicon.language;
  const values: number[] = [];
  for (let m = n - 1; m >= 0 && m >= n - 5; m--) {
    const words = items[m]?.words ?? "";
    const value = /^\d{1,4}(?:\.\d)?$/.test(words)
      ? Number(words)
      : Object.hasOwn(numbers, words)
        ? (numbers[words] ?? null)
        : null;
    if (value === null) {
      if (says(items[m], "glue") || /^(?:or|so|to|maybe|good|full|whole|solid|cool)$/.test(words)) continue;
      break;
    }
    const right = values.at(-1);
    if (words === "a" && right !== undefined) continue;
    if (words === "half" && right !== undefined) values[values.length - 1] = right * value;
    else if (right !== undefined && right < 10 && value >= 20 && items[m + 1]?.words !== "or")
      values[values.length - 1] = right + value;
    else if (right !== undefined && value < right && right % 100 === 0 && right > 0)
      values[values.length - 1] = right * value;
    else values.push(value);
  }
  if (values.length === 0) return null;
  return (values.reduce((sum, value) => sum + value, 0) / values.length) * unit;
}

/** Under 10 s short, over 30 s long: common practice, no source. */
const ofSeconds = (seconds: number): number => (seconds < 10 ? 2 : seconds <= 30 ? 5 : 8);
