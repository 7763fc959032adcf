import { z } from "zod";
import { Id } from "./fields.ts";
import { Issue } from "./issue.ts";
import { WhiskeyDraft } from "./whiskey.ts";

/** What a column of a shelf's list can stand for. */
export const ShelfColumn = z.enum([
  "ignore",
  "maker",
  "name",
  "release",
  "kind",
  "strength",
  "age",
  "bottle",
  "left",
  "opened",
  "price",
  "count",
  "distilledAt",
  "place",
  "availability",
  "casks",
  "grains",
  "note",
]);
export type ShelfColumn = z.infer<typeof ShelfColumn>;

export const SHELF_FILE_LIMITS = { characters: 4_000_000, rows: 5000, columns: 60, bottlesEach: 48 } as const;

/** A list of a shelf as separated values (CSV, RFC 4180 and what people make of it), and how to read it where the guess is wrong. */
export const ShelfListDraft = z.strictObject({
  text: z.string().min(1).max(SHELF_FILE_LIMITS.characters),
  /** What each column is, by its place; what is left out is guessed. */
  columns: z.array(ShelfColumn.nullable()).max(SHELF_FILE_LIMITS.columns).optional(),
  /** What bare numbers are; guessed where left out. */
  strengths: z.enum(["abv20", "proof60F"]).optional(),
  volumes: z.enum(["ml", "cl", "l", "oz"]).optional(),
  dates: z.enum(["dmy", "mdy"]).optional(),
});
export type ShelfListDraft = z.infer<typeof ShelfListDraft>;

const ListedRow = z.object({
  /** Line of the file on which it begins, from 1. */
  line: z.int(),
  /** As it would be written; null where something is wrong. */
  whiskey: WhiskeyDraft.nullable(),
  bottles: z.int(),
  capacityMl: z.number().nullable(),
  levelMl: z.number().nullable(),
  /** Day it was opened; null for sealed or not known. */
  openedOn: z.string().nullable(),
  /** The whiskey of the household, or the earlier line, that it is the same as. */
  same: z.object({ whiskeyId: Id.nullable(), line: z.int().nullable() }).nullable(),
  /** What was taken for what: "62,4" is 62.4 % vol. */
  guessed: z.array(z.object({ column: z.string(), wrote: z.string(), taken: z.string() })),
  issues: z.array(Issue),
});
export type ListedRow = z.infer<typeof ListedRow>;

export const ShelfListPreview = z.object({
  /** Of what was read and how: accepting names it, so that what is accepted is what was seen. */
  sha256: z.string(),
  separator: z.string(),
  columns: z.array(z.object({ heading: z.string(), as: ShelfColumn, guessed: z.boolean() })),
  rows: z.array(ListedRow),
  blank: z.int(),
  good: z.int(),
  wrong: z.int(),
  newWhiskeys: z.int(),
  bottles: z.int(),
  /** Of the file as a whole. */
  issues: z.array(Issue),
});
export type ShelfListPreview = z.infer<typeof ShelfListPreview>;

export const ShelfListAccept = z.strictObject({
  ...ShelfListDraft.shape,
  sha256: z.string().regex(/^[0-9a-f]{64}$/u),
  /** Lines that are taken in; every good one where left out. */
  lines: z.array(z.int().min(1)).max(SHELF_FILE_LIMITS.rows).optional(),
});
export const ShelfListAccepted = z.object({
  whiskeys: z.int(),
  bottles: z.int(),
  /** Lines that were not taken in. */
  left: z.array(z.int()),
});
export type ShelfListAccepted = z.infer<typeof ShelfListAccepted>;

export const ShelfExportQuery = z.object({ as: z.enum(["csv", "json"]).default("csv") });
export const ShelfExported = z.object({ name: z.string(), type: z.string(), text: z.string() });
