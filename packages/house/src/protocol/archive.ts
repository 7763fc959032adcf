import { z } from "zod";
import { Instant, ShortText } from "./fields.ts";
import { Currency } from "./household.ts";

/** The household's one file. Rows are the stored rows, table by table; what is sealed stays sealed. */
export const Archive = z.object({
  format: z.literal("partsproof-household"),
  formatVersion: z.literal(1),
  exportedAt: Instant,
  household: z.object({ name: ShortText, currency: Currency, demo: z.boolean() }),
  tables: z.record(z.string(), z.array(z.record(z.string(), z.unknown()))),
});
export type Archive = z.infer<typeof Archive>;
