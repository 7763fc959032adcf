import { DAY_MS } from "@partsproof/core/quantity";
import type { NextThing } from "@partsproof/house/protocol";

/** What is worth a notification: a day that was waited for. Flights at the table are in everybody's hands anyway. */
const WAITED_FOR: ReadonlySet<NextThing["kind"]> = new Set([
  "check tasting due",
  "pull window",
  "flight planned",
  "batch rested",
]);
/** After so long nobody is reminded any more. */
const LATE_MS = 14 * DAY_MS;
const HALF_A_DAY_MS = DAY_MS / 2;

export const keyOf = ({ kind, subject, at }: NextThing): string => `${kind} ${subject.id ?? ""} ${at ?? ""}`;

/** Things whose day has come and that were not said before. A day is counted from its morning, for its noon stands for it. */
export function dueNow(
  things: readonly NextThing[],
  said: ReadonlySet<string>,
  now: number,
): readonly NextThing[] {
  return things.filter((thing) => {
    if (thing.at === null || !WAITED_FOR.has(thing.kind) || said.has(keyOf(thing))) return false;
    const at = Date.parse(thing.at);
    return at - HALF_A_DAY_MS <= now && now - at <= LATE_MS;
  });
}
