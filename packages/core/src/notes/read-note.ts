import { applyPhrases } from "./apply-phrases.ts";
import { carryOver } from "./carry-over.ts";
import { cutWords } from "./cut-words.ts";
import { findItems, type Item } from "./find-items.ts";
import { findMentions } from "./find-mentions.ts";
import { findSections } from "./find-sections.ts";
import { type FinishLength, finishLengths } from "./finish-length.ts";
import type { Stance, Where } from "./language.ts";
import { leaveOut } from "./leave-out.ts";
import type { Lexicon } from "./lexicon.ts";
import { type Draft, type Mention, says } from "./mention.ts";
import { spreadOf, strengthOf } from "./strength-of.ts";
import { takeBack } from "./take-back.ts";

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
}

/**
 * Reads a tasting note, typed or dictated.
 *
 * @param where the part of the tasting that the note is of, until it says another; "whole" where not known
 * @returns observations and remarks in the order of the note. Never throws; time grows with the length of the text alone.
 */
export function readNote(text: string, lexicon: Lexicon, where: Where = "whole"): NoteRead {
  const items = findItems(cutWords(text), lexicon);
  const draft = findMentions(items, lexicon);
  applyPhrases(draft);
  carryOver(draft);
  leaveOut(draft);
  takeBack(draft);
  const sections = findSections(draft, where);
  const lengths = finishLengths(draft, sections);
  const observations = [
    ...draft.mentions.flatMap((mention) => observed(items, mention)),
    ...lengths.map(lengthObserved),
  ];
  observations.sort((a, b) => a.quote[0] - b.quote[0] || a.quote[1] - b.quote[1]);
  return { observations: gathered(observations), remarks: remarks(draft) };
}

function observed(items: readonly Item[], mention: Mention): Observation[] {
  const [first, last] = [items[mention.at], items[mention.last]];
  if (mention.dropped || first === undefined || last === undefined) return [];
  const stance = stanceOf(mention);
  return mention.attributes.map((attribute) => ({
    quote: [first.start, last.end] as const,
    word: mention.word,
    attribute,
    where: attribute === "time.finish" ? "finish" : mention.where,
    strength: strengthOf(mention, stance),
    spread: spreadOf(mention, stance),
    stance,
    who: mention.compared ? ("compared" as const) : ("this" as const),
  }));
}

function stanceOf({ not, gone, less, more, unsure }: Mention): Stance {
  if ((not || gone) && !less) return "absent";
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

/** "smoke, smoke, smoke" is one observation, and a strong one; the same length of the finish said twice running is one. */
function gathered(observations: readonly Observation[]): Observation[] {
  const kept: Observation[] = [];
  for (const one of observations) {
    const before = kept.findLast(({ attribute }) => attribute === one.attribute);
    const again =
      before &&
      before.word === one.word &&
      before.where === one.where &&
      before.stance === one.stance &&
      one.stance === "present";
    if (again && one.quote[0] - before.quote[1] <= 12 && kept.at(-1) === before) {
      const strength = Math.min(10, Math.max(7, before.strength + 1, one.strength + 1));
      kept[kept.length - 1] = {
        ...before,
        quote: [before.quote[0], one.quote[1]],
        strength: one.attribute === "time.finish" ? Math.max(before.strength, one.strength) : strength,
      };
    } else kept.push(one);
  }
  return kept;
}

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
