import type { Item } from "./find-items.ts";
import { isStop } from "./mention.ts";

const ARRIVES =
  /^(?:(?:came|comes?) )?(?:after|back|behind|first|forward|in|last|late|later|next|out|second|then|through|up)\b/;

/** "Cinnamon came in first": a flavour, and nobody of that name. */
export function cameIn(items: readonly Item[], at: number): boolean {
  const [before, item, next] = [items[at - 1], items[at], items[at + 1]];
  if (!isStop(before) && item?.capital === true) return false;
  const verb = next?.words ?? "";
  return (
    /^comes?\b|^came\b/.test(verb) &&
    ARRIVES.test(/^(?:comes?|came)$/.test(verb) ? `${items[at + 2]?.words}` : verb)
  );
}
