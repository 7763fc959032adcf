import { applyPhrases } from "./apply-phrases.ts";
import { carryOver } from "./carry-over.ts";
import { cutWords } from "./cut-words.ts";
import { findItems, type Item } from "./find-items.ts";
import { findMentions } from "./find-mentions.ts";
import { findSections } from "./find-sections.ts";
import { type FinishLength, finishLengths } from "./finish-length.ts";
import type { Stance, Where } from "./language.ts";
import { leaveOut } from "./leave-out.ts";
import { likenedFeel } from "./likened-feel.ts";
import type { Lexicon } from "./lexicon.ts";
import { type Draft, isAbsent, isStop, type Mention, says } from "./mention.ts";
import { panelScores } from "./panel-scores.ts";
import { spreadOf, strengthOf } from "./strength-of.ts";
import { takeBack } from "./take-back.ts";
import { weigh } from "./weigh.ts";

/** One flavour that a note speaks of. */
export interface Observation {
  /** Where it stands in the note: UTF-16 units, the end left out. */
  readonly quote: readonly [start: number, end: number];
  /** As the vocabulary has it. */
  readonly word: string;
  /** "family.group" */
  readonly attribute: string;
  readonly where: Where;
  /** 0 (not there) to 10. */
  readonly strength: number;
  /** Standard deviation of the strength, on the same scale. */
  readonly spread: number;
  readonly stance: Stance;
  readonly who: "this" | "compared";
}

/** What a note says besides flavours. */
export interface Remark {
  readonly quote: readonly [start: number, end: number];
  readonly kind: "liking" | "memory" | "other glass";
  /** Of a liking: whether it is one. */
  readonly liking?: 1 | -1;
}

export interface NoteRead {
  readonly observations: readonly Observation[];
  readonly remarks: readonly Remark[];
  /** What was left out for being hardly a flavour of the glass, for whoever has said otherwise. */
  readonly doubted: readonly Observation[];
}

/**
 * Reads a tasting note, typed or dictated.
 *
 * @param where the part of the tasting that the note is of, until it says another; "whole" where not known
 * @returns observations and remarks in the order of the note. Never throws; time grows with the length of the text alone.
 */
export function readNote(text: string, lexicon: Lexicon, where: Where = "whole"): NoteRead {
  const items = findItems(cutWords(text, lexicon.shortened), lexicon);
  const draft = findMentions(items, lexicon);
  applyPhrases(draft);
  panelScores(draft);
  carryOver(draft);
  likenedFeel(draft);
  leaveOut(draft);
  takeBack(draft);
  const sections = findSections(draft, where);
  const lengths = finishLengths(draft, sections);
  weigh(draft);
  const observations = [
    ...draft.mentions.flatMap((mention) => observed(draft, mention, mention.attributes)),
    ...lengths.map(lengthObserved),
  ];
  observations.sort((a, b) => a.quote[0] - b.quote[0] || a.quote[1] - b.quote[1]);
  const doubted = draft.mentions.flatMap((mention) => observed(draft, mention, mention.doubted));
  return { observations: gathered(observations, text), remarks: remarks(draft), doubted };
}

function observed({ items, lexicon }: Draft, mention: Mention, attributes: readonly string[]): Observation[] {
  const [first, last] = [items[mention.at], items[mention.last]];
  if (mention.dropped || first === undefined || last === undefined) return [];
  const stance = stanceOf(mention);
  // "orange peel", "apple pie": what it takes in is of the word.
  const word = [mention.word, ...items.slice(mention.at + 1, mention.last + 1).map(({ words }) => words)];
  const stings = !lexicon.learned.has(mention.word) && stingsNose(items, mention, stance);
  return attributes.map((attribute) => ({
    quote: [first.start, last.end] as const,
    word: word.join(" "),
    attribute: attribute === "feel.burn" && stings ? "spirit.ethanol" : attribute,
    where: attribute === "time.finish" ? "finish" : mention.where,
    strength: strengthOf(mention, stance),
    spread: spreadOf(mention, stance),
    stance,
    who: mention.compared ? ("compared" as const) : ("this" as const),
  }));
}

/** "The nose is hot", where the sentence names it: what burns there is the spirit. */
function stingsNose(
  items: readonly Item[],
  { at, where, less, more, not, gone }: Mention,
  stance: Stance,
): boolean {
  if (where !== "nose" || less || more || not || gone || stance === "absent") return false;
  for (const step of [-1, 1])
    for (let n = at + step; n >= 0 && !isStop(items[n]); n += step)
      if (says(items[n], "where")?.where === "nose") return true;
  return false;
}

function stanceOf(mention: Mention): Stance {
  const { less, more, unsure } = mention;
  if (isAbsent(mention)) return "absent";
  if (less) return "less";
  if (more) return "more";
  return unsure ? "unsure" : "present";
}

const lengthObserved = ({ start, end, word, strength, unsure, stance }: FinishLength): Observation => ({
  quote: [start, end],
  word,
  attribute: "time.finish",
  where: "finish",
  strength,
  spread: 1.2,
  stance: unsure ? "unsure" : stance,
  who: "this",
});

/** What may stand between a word and the same word said again for emphasis. */
const BETWEEN =
  /^(?:[\s,…-]|\b(?:and|more|very|really|so|just|oh|yes|lots|of|upon|on|after|then|again)\b)*$/i;

/** "smoke, smoke, smoke" is one observation, and a strong one; so is each of a word that comes again and again. */
function gathered(observations: readonly Observation[], text: string): Observation[] {
  const kept: Observation[] = [];
  const times = new Map<string, number>();
  const key = ({ attribute, word, where }: Observation): string =>
    `${attribute} ${where} ${word.slice(0, 3)}`;
  for (const one of observations) {
    if (one.stance !== "absent") times.set(key(one), (times.get(key(one)) ?? 0) + 1);
    const before = kept.at(-1);
    const again =
      before !== undefined &&
      before.attribute === one.attribute &&
      before.word === one.word &&
      before.where === one.where;
    if (
      !again ||
      one.stance !== "present" ||
      before.stance !== "present" ||
      !BETWEEN.test(text.slice(before.quote[1], one.quote[0]))
    )
      kept.push(one);
    else {
      const [least, most] = [before.strength, one.strength].toSorted((a, b) => a - b) as [number, number];
      // "melon melon" once is a stumble of the tongue.
      const stumble = text.slice(before.quote[1], one.quote[0]).trim() === "";
      kept[kept.length - 1] = {
        ...before,
        quote: [before.quote[0], one.quote[1]],
        strength: stumble ? most : emphatic(most, least),
      };
    }
  }
  return kept.map((one) => {
    const often =
      (times.get(key(one)) ?? 0) > 2 && one.stance !== "absent" && one.attribute !== "time.finish";
    return often ? { ...one, strength: emphatic(one.strength, one.strength) } : one;
  });
}

/** Said over and over: stronger, and weaker where the word itself is weak ("thin, thin"). */
const emphatic = (most: number, least: number): number =>
  least < 4 ? Math.max(0.3, least - 0.7) : Math.min(10, Math.max(7, most + 1));

function remarks({ items }: Draft): Remark[] {
  const found: Remark[] = [];
  for (const item of items) {
    if (item.mark !== "") continue;
    const quote = [item.start, item.end] as const;
    const liking = says(item, "liking")?.liking;
    if (liking !== undefined) found.push({ quote, kind: "liking", liking });
    else if (says(item, "memory")) found.push({ quote, kind: "memory" });
    else if (says(item, "other")) found.push({ quote, kind: "other glass" });
  }
  return found;
}
