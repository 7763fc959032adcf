import type { CalendarEvent } from "@partsproof/core/calendar";
import type { NoteReader } from "@partsproof/core/notes";
import type { RestAdvice } from "../../protocol/index.ts";
import { restDue } from "../batches/index.ts";
import { adviceOf, startOf, type WholeRest } from "../resting/index.ts";
import type { BatchRow } from "../rows.ts";
import { dayOn, dayWords } from "./days.ts";

/** What of a household stands in a calendar. */
export interface Dated {
  /** Made and not finished, with something in them. */
  readonly batches: readonly BatchRow[];
  /** Of these that get water in steps: the days on which a step is due. */
  readonly steps: readonly { readonly batch: BatchRow; readonly dueAt: readonly string[] }[];
  /** Of these batches, that go on or have a flight planned. */
  readonly rests: readonly WholeRest[];
  readonly read: NoteReader;
}

/** Who may see the calendar: names of batches in the household's own file, neutral words behind a link (C2). */
export type Words = "named" | "neutral";

export function eventsOf(
  { batches, steps, rests, read }: Dated,
  zone: string,
  words: Words,
  now: Date,
): CalendarEvent[] {
  const called = ({ name, madeAt }: BatchRow): string =>
    words === "named" ? name : `the batch of ${dayWords(zone, madeAt)}`;
  return [
    ...batches.flatMap((batch) => restedEvent(batch, zone, called(batch))),
    ...steps.flatMap(({ batch, dueAt }) =>
      dueAt.map((at, i) => stepEvent(batch, at, dueAt.length - i, zone, called(batch))),
    ),
    ...rests.flatMap((whole) => [
      ...(whole.rest.endedAt === null
        ? restEvents(whole, adviceOf(whole, read, now, "rule"), zone, called(whole.batch))
        : []),
      ...flightEvent(whole, words === "named" ? `: ${whole.batch.name}` : ""),
    ]),
  ];
}

function restedEvent(batch: BatchRow, zone: string, called: string): CalendarEvent[] {
  const due = restDue(batch);
  if (due === null) return [];
  return [
    {
      uid: `batch-rested-${batch.id}@partsproof`,
      changedAt: new Date(batch.updatedAt),
      words: `${capital(called)} has rested its ${batch.restDays === 1 ? "1 day" : `${batch.restDays} days`}`,
      on: { kind: "day", date: dayOn(zone, due.toISOString()) },
    },
  ];
}

/** Told apart by how many are still to come with it: one that is poured early does not rename the others. */
function stepEvent(batch: BatchRow, at: string, toCome: number, zone: string, called: string): CalendarEvent {
  return {
    uid: `water-${toCome}-${batch.id}@partsproof`,
    changedAt: new Date(batch.updatedAt),
    words: `The next step of water for ${called}`,
    on: { kind: "day", date: dayOn(zone, at) },
  };
}

/** C1: before anything was tasted the window is all that was believed beforehand, months wide: it is left out. */
function restEvents(whole: WholeRest, advice: RestAdvice, zone: string, called: string): CalendarEvent[] {
  const { rest, pieces, checks } = whole;
  const start = startOf(whole);
  const changedAt = new Date(
    [rest.updatedAt, ...pieces.map((one) => one.updatedAt), ...checks.map((one) => one.createdAt)].reduce(
      (last, at) => (at > last ? at : last),
    ),
  );
  const on = (what: string, text: string, at: string): CalendarEvent => ({
    uid: `${what}-${rest.id}@partsproof`,
    changedAt,
    words: text,
    on: { kind: "day", date: dayOn(zone, at) },
  });
  const tasted = checks.some(({ at }) => at > start);
  return [
    ...advice.nextTastings.map(({ at, day }, i) =>
      on(`check-${i + 1}`, `Taste ${called}: day ${day} on oak`, at),
    ),
    ...(tasted && advice.readyFrom !== null
      ? [on("ready-from", `Likely ready from here: ${called} (80 %)`, advice.readyFrom)]
      : []),
    ...(tasted && advice.readyTo !== null
      ? [on("ready-to", `Likely ready until here: ${called} (80 %)`, advice.readyTo)]
      : []),
    ...(tasted && advice.leadsFrom !== null
      ? [on("leads", `Past this the oak leads, as likely as not: ${called}`, advice.leadsFrom)]
      : []),
  ];
}

function flightEvent({ rest }: WholeRest, of: string): CalendarEvent[] {
  if (rest.flightOn === null) return [];
  return [
    {
      uid: `flight-${rest.id}@partsproof`,
      changedAt: new Date(rest.updatedAt),
      words: `Before-and-after flight${of}`,
      on: { kind: "day", date: rest.flightOn },
    },
  ];
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
