import type { Item } from "./find-items.ts";
import { isStop } from "./mention.ts";

const REACH = 22;
const AGREED =
  /\b(?:(?:he|she|they)(?:'s| is|'re| are) (?:dead |quite |so |absolutely |spot )?(?:right|on)|not (?:far )?wrong|i agree|agreed|so do i|me too|i(?: can| do)? (?:get|find|see|taste|smell) (?:it|that|them) (?:too|as well))\b/;

/** "my granddaughter says felt tips and she's not wrong": what somebody else says, and the writer too. */
export function agreedWith(items: readonly Item[], from: number): boolean {
  const words: string[] = [];
  let stops = 0;
  for (let n = from + 1; n < items.length && n < from + REACH; n++) {
    const item = items[n] as Item;
    if (isStop(item) && ++stops > 1) break;
    if (item.mark === "") words.push(item.words);
  }
  return AGREED.test(words.join(" "));
}
