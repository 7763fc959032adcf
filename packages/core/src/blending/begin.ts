import { improve } from "./improve.ts";
import type { Space } from "./space.ts";
import type { TopList } from "./top-list.ts";

/** Few starts do, as the proof finds the rest; more where rules bind, and until the list is full. */
const FREE = 6;
const RULED = 24;
const SHORT = 48;
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/** Recipes to begin with: starts spread over the shelf, the same every time, bettered by exchanges. */
export function* begin(space: Space, list: TopList): Generator<void, void, void> {
  const { n, maxBottles, maxParts } = space;
  const enough = (): number =>
    list.threshold === Infinity ? SHORT : space.rules.rows.length > 0 ? RULED : FREE;
  const size = Math.min(n, maxBottles, maxParts);
  for (let start = 0; start < enough(); start += 1) {
    const places = new Set<number>(space.required);
    for (let turn = 1; places.size < size; turn += 1)
      places.add(Math.floor((((start * 7 + turn) * GOLDEN * turn) % 1) * n));
    const support: number[] = [];
    const parts: number[] = [];
    let left = maxParts;
    for (const place of places) {
      const own = Math.max(1, space.rules.least[place]!);
      if (own > left) break;
      support.push(place);
      parts.push(own);
      left -= own;
    }
    yield;
    improve(space, list, support, parts);
  }
}
