import { evidence, type Setting, settingOf } from "./evidence.ts";
import type { Weighing } from "./language.ts";
import { listed } from "./listed.ts";
import { type Draft, isAbsent, type Mention } from "./mention.ts";

interface Scales {
  readonly start: number;
  readonly least: number;
  readonly near: ReadonlyMap<string, readonly string[]>;
  readonly weights: ReadonlyMap<string, number>;
  readonly known: number;
  readonly knownWords: ReadonlySet<string>;
}

/** A text that speaks of flavours more often is no note. */
const MOST = 400;

const made = new WeakMap<Weighing, Scales>();

/**
 * Leaves out what is hardly a flavour of the glass: for every mention the evidence for and against it is summed (a logistic model, its
 * weights the language's). What is denied stays, and what a household taught: it knows better. A language without weights leaves out nothing.
 */
export function weigh(draft: Draft): void {
  const { weighing } = draft.lexicon.language;
  if (weighing === undefined || draft.mentions.length > MOST) return;
  let scales = made.get(weighing);
  if (scales === undefined) made.set(weighing, (scales = scalesOf(weighing, draft.lexicon.language.slips)));
  const setting = settingOf(draft);
  const unlikely = draft.mentions.map((mention) =>
    mention.dropped || isAbsent(mention) || draft.lexicon.learned.has(mention.word)
      ? []
      : mention.attributes.filter((one) => logit(draft, mention, one, setting, scales) < scales.least),
  );
  for (const [n, mention] of draft.mentions.entries()) {
    const doubted = unlikely[n] ?? [];
    if (doubted.length === 0) continue;
    mention.doubted = doubted;
    mention.attributes = mention.attributes.filter((one) => !doubted.includes(one));
  }
}

function logit(draft: Draft, mention: Mention, attribute: string, setting: Setting, scales: Scales): number {
  let sum = scales.start + (scales.knownWords.has(mention.word) ? scales.known : 0);
  for (const one of evidence(draft, mention, attribute, setting, scales.near))
    sum += scales.weights.get(one) ?? 0;
  return sum;
}

function scalesOf({ start, least, known, near, weights }: Weighing, slips: string): Scales {
  const byWord = new Map<string, string[]>();
  for (const [kind, list] of Object.entries(near))
    for (const word of listed(list)) byWord.set(word, [...(byWord.get(word) ?? []), kind]);
  const byName = Object.entries(weights).flatMap(([weight, names]) =>
    listed(names).map((name) => [name, Number(weight)] as const),
  );
  return { start, least, known, knownWords: new Set(listed(slips)), near: byWord, weights: new Map(byName) };
}
