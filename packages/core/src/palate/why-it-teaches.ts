import type { LearnedLevels } from "./learn-levels.ts";
import type { Pourable, Taught } from "./teaches-most.ts";

/** What things are called. */
export interface Called {
  readonly whiskey: (id: string) => string;
  readonly attribute: (id: string) => string;
}

/** Less of what a glass teaches than this is not worth a word. */
const WORTH_A_WORD = 0.15;

const list = (words: readonly string[]): string =>
  words.length < 2 ? (words[0] ?? "") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;

/** How often each of the glass's whiskeys was spoken of: in the attribute that was spoken of most. */
function toldOf({ whiskeys, attributes }: LearnedLevels, id: string) {
  const i = whiskeys.indexOf(id);
  const most = (counts: (one: LearnedLevels["attributes"][number]) => Int32Array): number =>
    Math.max(0, ...attributes.map((one) => counts(one)[i] ?? 0));
  return { alone: most(({ alone }) => alone), inMixes: most(({ inMixes }) => inMixes) };
}

/**
 * Why a note of a glass would teach so much, in words: what was said of it so far, what the note would be about, and what else it tells
 * of.
 *
 * @example whyItTeaches(learned, { id: "rye", parts: { rye: 1 } }, taught, called) // "Nothing was said of it yet. A note would take …"
 */
export function whyItTeaches(
  learned: LearnedLevels,
  { parts }: Pourable,
  { share, whiskeys, attributes }: Taught,
  called: Called,
): string {
  const own = Object.keys(parts).filter((id) => (parts[id] ?? 0) > 0);
  const told = own.map((id) => toldOf(learned, id));
  const alone = told.reduce((sum, one) => sum + one.alone, 0);
  const inMixes = told.reduce((sum, one) => sum + one.inMixes, 0);
  const it = own.length === 1 ? "it" : "its whiskeys";
  const so =
    alone + inMixes === 0
      ? `Nothing was said of ${it} yet`
      : alone === 0
        ? `Nothing was said of ${it} alone, only of mixes with ${own.length === 1 ? "it" : "them"}`
        : alone === 1
          ? `Only one note is of ${own.length === 1 ? "it alone" : "one of them alone"}`
          : own.length === 1
            ? `Notes of it so far leave it less sure than it could be`
            : `It tells of ${own.length} whiskeys at once`;
  const about = list(attributes.slice(0, 3).map(({ id }) => called.attribute(id)));
  const others = whiskeys.filter((one) => !own.includes(one.id));
  const besides = others.reduce((sum, one) => sum + one.share, 0);
  const also =
    besides < WORTH_A_WORD
      ? ""
      : `; ${Math.round(100 * besides)} % of that is about others, first ${called.whiskey(others[0]?.id ?? "")}, in a mix with it or like it by its label`;
  const percent = 100 * share;
  return `${so}. A note would take ${percent < 1 ? percent.toFixed(1) : percent.toFixed(0)} % off all that is not known, most about ${about}${also}.`;
}
