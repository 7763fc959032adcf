import type { WordSet } from "./language.ts";
import { listed } from "./listed.ts";

const NONE: ReadonlySet<WordSet> = new Set();

/** Which kinds of words a phrase is one of: as a whole, by how it begins ("was *") or by how it ends ("* end"). */
export function kindsOf(
  sets: Readonly<Record<WordSet, string>>,
): (words: string, text: string) => ReadonlySet<WordSet> {
  const of = new Map<string, WordSet[]>();
  for (const [kind, list] of Object.entries(sets) as [WordSet, string][])
    for (const entry of listed(list)) {
      const kinds = of.get(entry);
      if (kinds === undefined) of.set(entry, [kind]);
      else kinds.push(kind);
    }
  const known = new Map<string, ReadonlySet<WordSet>>();
  const one = (phrase: string): WordSet[] => {
    const words = phrase.split(" ");
    return [
      ...(of.get(phrase) ?? []),
      ...words.flatMap((_, n) => of.get(`${words.slice(0, n + 1).join(" ")} *`) ?? []),
      ...words.flatMap((_, n) => of.get(`* ${words.slice(n).join(" ")}`) ?? []),
    ];
  };
  // What a note says for the first time is not kept: only what a language knows can come again without end.
  for (const entry of of.keys()) if (!entry.includes("*")) known.set(entry, new Set(one(entry)));
  return (words, text) => {
    const [a, b] = [kept(words), text === words || text === "" ? NONE : kept(text)];
    return b.size === 0 ? a : a.size === 0 ? b : new Set([...a, ...b]);
  };

  function kept(phrase: string): ReadonlySet<WordSet> {
    const found = known.get(phrase);
    if (found !== undefined) return found;
    const kinds = one(phrase);
    return kinds.length === 0 ? NONE : new Set(kinds);
  }
}
