import { heldLevel } from "./held-level.ts";
import type { LearnedLevels } from "./learn-levels.ts";
import { mixLevels } from "./mix-levels.ts";
import type { Pourable, Taught } from "./teaches-most.ts";

/** What was said of a whiskey so far. */
export interface ToldOf {
  /** Notes of it alone, and of mixes that held it. */
  readonly alone: number;
  readonly inMixes: number;
  /** Whether the shelf says what it tastes of. */
  readonly written: boolean;
}

/** What is particular to the whiskeys of a glass, and what things are called. */
export interface Particular {
  readonly whiskey: (id: string) => string;
  readonly attribute: (id: string) => string;
  readonly toldOf: (id: string) => ToldOf;
  /** Names of the recipes that hold a whiskey, the one that holds most of it first. */
  readonly recipes: (id: string) => readonly string[];
  /** Share of a level that its interval holds, 0 to 1. */
  readonly level: number;
}

/** Less of what a glass teaches than this is not worth a word. */
const WORTH_A_WORD = 0.15;
/** So many recipes are named. */
const NAMED = 2;

const list = (words: readonly string[]): string =>
  words.length < 2 ? (words[0] ?? "") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;

const plural = (count: number, one: string): string => `${count} ${count === 1 ? one : `${one}s`}`;

const sources = ({ alone, inMixes, written }: ToldOf): readonly string[] => [
  ...(alone > 0 ? [`${plural(alone, "note")} of it`] : []),
  ...(written ? ["what the shelf says"] : []),
  ...(inMixes > 0 ? [`${plural(inMixes, "note")} of mixes with it`] : []),
];

/** What is known of a glass's whiskeys, and from what: of a mix, of the one of which there are fewest notes. */
function knownFrom(own: readonly string[], { whiskey, toldOf }: Particular): string {
  const known = (id: string): string => list(sources(toldOf(id)));
  if (own.length === 1) {
    const from = known(own[0] as string);
    return from === "" ? "Nothing was said of it yet, only its label." : `Known from ${from}.`;
  }
  const rank = (id: string): number => toldOf(id).alone + Number(toldOf(id).written) + toldOf(id).inMixes;
  const [least = ""] = own.toSorted((a, b) => rank(a) - rank(b) || (a < b ? -1 : 1));
  const from = known(least);
  return `It tells of ${own.length} whiskeys at once; least is said of ${whiskey(least)}: ${from === "" ? "nothing yet" : from}.`;
}

/**
 * The attribute in which a glass's own level may lie farthest apart, held within the scale, of those that were spoken of, of its whiskeys or
 * of mixes with them; and of how many nothing was said. Where none was, by the labels alone.
 */
function widest(learned: LearnedLevels, parts: Pourable["parts"], { attribute, level }: Particular): string {
  const own = learned.whiskeys.flatMap((id, i) => ((parts[id] ?? 0) > 0 ? [i] : []));
  const spoken = new Set(
    learned.attributes.flatMap(({ id, alone, inMixes }) =>
      own.some((i) => (alone[i] ?? 0) + (inMixes[i] ?? 0) > 0) ? [id] : [],
    ),
  );
  const levels = Object.entries(mixLevels(learned, parts))
    .map(([id, said]) => ({ id, ...heldLevel(said, level) }))
    .toSorted((a, b) => b.high - b.low - (a.high - a.low) || (a.id < b.id ? -1 : 1));
  const first = levels.find(({ id }) => spoken.size === 0 || spoken.has(id));
  if (first === undefined) return "";
  const { id, mean, low, high } = first;
  const silent = spoken.size === 0 ? 0 : levels.length - spoken.size;
  const unsaid = silent === 0 ? "" : `; of ${plural(silent, "attribute")} nothing was said`;
  return ` Its widest level is ${attribute(id)}: ${mean.toFixed(1)}, from ${low.toFixed(1)} to ${high.toFixed(1)}${unsaid}.`;
}

/** The recipes that a whiskey alone stands in. */
function hanging(own: readonly string[], { recipes }: Particular): string {
  const names = own.length === 1 ? recipes(own[0] as string) : [];
  if (names.length === 0) return "";
  const more = names.length > NAMED ? ` and ${names.length - NAMED} more` : "";
  return ` ${plural(names.length, "recipe")} ${names.length === 1 ? "hangs" : "hang"} on it: ${names.slice(0, NAMED).join(", ")}${more}.`;
}

/**
 * Why a note of a glass would teach so much, in words, by what is its own: from what it is known, its widest attribute, the recipes that
 * hang on it, and how much of what the note takes off is about others.
 *
 * @example whyItTeaches(learned, { id: "rye", parts: { rye: 1 } }, taught, particular) // "Known from 1 note of it. Its widest level is smoke: 2.1, …"
 */
export function whyItTeaches(
  learned: LearnedLevels,
  { parts }: Pourable,
  { share, whiskeys }: Taught,
  particular: Particular,
): string {
  const own = Object.keys(parts).filter((id) => (parts[id] ?? 0) > 0);
  const others = whiskeys.filter((one) => !own.includes(one.id));
  const besides = others.reduce((sum, one) => sum + one.share, 0);
  const also =
    besides < WORTH_A_WORD
      ? ""
      : `, ${Math.round(100 * besides)} % of that about others, first ${particular.whiskey(others[0]?.id ?? "")}`;
  const percent = 100 * share;
  const takes = `A note would take ${percent < 1 ? percent.toFixed(1) : percent.toFixed(0)} % off all that is not known${also}.`;
  return `${knownFrom(own, particular)}${widest(learned, parts, particular)}${hanging(own, particular)} ${takes}`;
}
