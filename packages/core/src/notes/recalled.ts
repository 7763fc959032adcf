import type { Item } from "./find-items.ts";
import { isStop, says } from "./mention.ts";

/** "she kept a tin of barley sugar, and that's what comes to mind" */
export function recalled(items: readonly Item[], n: number): boolean {
  let stops = 0;
  for (let m = n + 1; m < items.length && m < n + 24; m++) {
    if (isStop(items[m]) && ++stops > 1) return false;
    if (says(items[m], "memory") && /^that|^(?:comes|springs) to mind$/.test(items[m]?.words ?? ""))
      return true;
  }
  return false;
}
