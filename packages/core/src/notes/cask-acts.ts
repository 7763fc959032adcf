import type { Item } from "./find-items.ts";
import { is, isPlain } from "./mention.ts";

/** Whether the cask named here does something, and is no flavour: "all night the barrel dreamed", "the cask has said". */
export const caskActs = (items: readonly Item[], at: number): boolean => {
  const [before, next, after] = [items[at - 1], items[at + 1], items[at + 2]];
  const verb = next?.words === "has" || next?.words === "had" ? after : next;
  return (
    is(items[at], "wooden") &&
    /^(?:barrel|cask)s?$/.test(items[at]?.text ?? "") &&
    /(?:^| )(?:the|this|its)$/.test(before?.words ?? "") &&
    verb !== undefined &&
    (/^(?:did|done|gave|given|said|says|does|took|taken|left)$/.test(verb.words) ||
      (isPlain(verb) && /..ed$/.test(verb.words)))
  );
};
