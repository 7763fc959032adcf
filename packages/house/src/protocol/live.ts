import { z } from "zod";
import { Id, Instant } from "./fields.ts";
import { Flight } from "./flight.ts";
import { MOST_GLASSES_EACH } from "./glass.ts";

export const LiveKind = z.enum([
  "seat taken",
  "seat freed",
  "at a glass",
  "locked",
  "closed",
  "poured",
  "revealed",
  "glass opened",
  "called off",
]);
export type LiveKind = z.infer<typeof LiveKind>;

/** Something that happened at the table. Nothing of it is about content. */
export const LiveEvent = z.object({
  kind: z.literal("event"),
  /** 1, 2, … of this flight; the id of the event in the stream. */
  seq: z.int(),
  what: LiveKind,
  at: Instant,
  sheetId: Id.nullable(),
  /** `at a glass`: its position in this taster's order. `glass opened`: how many are open. */
  number: z.int().nullable(),
});
export type LiveEvent = z.infer<typeof LiveEvent>;

/** Where the table stands: the first message of a stream that does not go on from an earlier one. */
export const LiveState = z.object({
  kind: z.literal("state"),
  seq: z.int(),
  state: Flight.shape.state,
  seats: z.array(
    z.object({
      sheetId: Id,
      taster: z.string(),
      state: Flight.shape.sheets.element.shape.state,
      /** The glass in hand, by its position; null when not told, and to a watcher. */
      position: z.int().nullable(),
    }),
  ),
  /** Glasses of the reveal that are open on all phones. */
  opened: z.int(),
});
export type LiveState = z.infer<typeof LiveState>;

export const LiveMessage = z.discriminatedUnion("kind", [LiveState, LiveEvent]);
export type LiveMessage = z.infer<typeof LiveMessage>;

/** Null when the taster put it down. */
export const AtGlass = z.object({ position: z.int().min(1).max(MOST_GLASSES_EACH).nullable() });
export const GlassOpened = z.object({ count: z.int().min(0).max(MOST_GLASSES_EACH) });
