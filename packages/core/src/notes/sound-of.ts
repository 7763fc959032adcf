import type { Language } from "./language.ts";

/** How a word sounds, roughly: its first letter and its consonants, spellings of one sound written once. */
export function soundOf(word: string, { language }: { readonly language: Language }): string {
  let sound = word[0] ?? "";
  for (let at = 0; at < word.length; ) {
    const found = language.sounds.find(([letters]) => word.startsWith(letters, at));
    const [letters, part] = found ?? [word[at] ?? "", word[at] ?? ""];
    if (part !== "" && !sound.endsWith(part)) sound += part;
    at += letters.length;
  }
  return sound;
}
