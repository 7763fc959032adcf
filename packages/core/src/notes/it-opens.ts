import type { Item } from "./find-items.ts";
import { is, isStop, says } from "./mention.ts";

/** Whether the whiskey opens, and nothing with it: "With the water it opens.", "it opens, I find honey"; not "it opens with lemon". */
export function opensAlone(items: readonly Item[], at: number): boolean {
  const [next, after] = [items[at + 1], items[at + 2]];
  if (isStop(next) || is(next, "closers")) return true;
  if (next?.mark === "comma" || says(next, "join")?.join === "and") return says(after, "start") !== undefined;
  return /^(?:and then|after|but|nicely|slowly|well|with (?:the |some |a little )?water)\b/.test(
    `${next?.words} ${after?.words}`,
  );
}
