import { z } from "zod";
import { Instant, Version } from "./fields.ts";
import { Sheet, SheetEdit } from "./flight.ts";
import { DeviceKey } from "./joining.ts";

const { notes, guesses, ranking, answers, strengths, typedBy } = SheetEdit.shape;
const written = { notes, guesses, ranking, answers, strengths, typedBy };

export const EntryDraft = z.object({
  key: DeviceKey,
  /** The number of the last entry this device has seen on the sheet; 0 for none. */
  after: z.int().min(0),
  ...written,
});
export type EntryDraft = z.infer<typeof EntryDraft>;

/** One entry: what was written at one moment. Entries are never changed; the sheet is what they come to. */
export const Entry = z.object({
  number: z.int().min(1),
  key: z.string(),
  kind: z.enum(["written", "locked"]),
  at: Instant,
  ...written,
  /** Of this entry and the one before it. */
  hash: z.string().nullable(),
});
export type Entry = z.infer<typeof Entry>;

export const EntryKept = z.object({ entry: Entry, sheet: Sheet });
export const Entries = z.object({ items: z.array(Entry) });

/** A lock says which version of the sheet, or which last entry, it locks. */
export const LockDraft = z
  .object({ version: Version.optional(), after: z.int().min(0).optional(), key: DeviceKey.optional() })
  .refine(({ version, after }) => version !== undefined || after !== undefined, {
    message: "the version or the last entry of the sheet",
  });
