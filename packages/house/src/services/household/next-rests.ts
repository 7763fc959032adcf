import type { NoteReader } from "@partsproof/core/notes";
import type { NextThing } from "../../protocol/index.ts";
import { adviceOf, startOf, type WholeRest } from "../resting/index.ts";

/** What a rest waits for: a tasting, the window in which it is likely ready, the flight that was planned at its start. */
export function nextOfRest(whole: WholeRest, read: NoteReader, now: Date): NextThing[] {
  const { rest, batch, checks } = whole;
  const subject = { kind: "batch" as const, id: batch.id };
  const flight: NextThing[] =
    rest.flightOn === null
      ? []
      : [
          {
            kind: "flight planned",
            text: `${batch.name}, before and after: a flight is planned`,
            at: `${rest.flightOn}T12:00:00.000Z`,
            subject,
          },
        ];
  if (rest.endedAt !== null) return flight;
  const { answer, nextTastings, tasteNow, readyFrom, readyTo } = adviceOf(whole, read, now, "rule");
  if (answer === null) return flight;
  const [next] = nextTastings;
  const tasting: NextThing[] = tasteNow
    ? [
        {
          kind: "check tasting due",
          text:
            next === undefined
              ? `Taste ${batch.name}: it is as likely as not ready`
              : `Taste ${batch.name}: day ${next.day} on oak`,
          at: next?.at ?? now.toISOString(),
          subject,
        },
      ]
    : next === undefined
      ? []
      : [
          {
            kind: "check tasting planned",
            text: `Taste ${batch.name}: day ${next.day} on oak`,
            at: next.at,
            subject,
          },
        ];
  // Before anything was tasted the window is all that was believed beforehand, and says little.
  const tasted = checks.some(({ at }) => at > startOf(whole));
  const window: NextThing[] =
    tasted && readyFrom !== null && readyTo !== null
      ? [
          {
            kind: "pull window",
            text: `${batch.name} is likely ready from here on (80 %)`,
            at: readyFrom,
            subject,
          },
        ]
      : [];
  return [...tasting, ...window, ...flight];
}
