import { z } from "zod";
import { Id } from "./fields.ts";

const Digest = z.string().regex(/^[0-9a-f]{64}$/);
const Hex = z.string().regex(/^([0-9a-f]{2})*$/);

/** The published record in the form that core/sealing verifies (`PublishedRecord`). */
const PublishedRecord = z.object({
  form: z.literal("parts-and-proof/record/1"),
  commitment: Digest,
  nonce: Hex,
  key: Hex,
  closing: z.object({
    closedAt: z.int(),
    heads: z.array(z.object({ sheet: z.string(), entries: z.int(), hash: Digest })),
    hash: Digest,
  }),
  sheets: z.array(
    z.object({
      sheet: z.string(),
      salt: Hex,
      entries: z.array(
        z.object({
          at: z.int(),
          kind: z.enum(["note", "guess", "rank", "lock"]),
          /** What was written, as JSON. */
          body: z.string(),
          hash: Digest,
        }),
      ),
    }),
  ),
});

/** The promise of a flight's key, and after the reveal what checks it. Null where nothing was promised: alone, or long ago. */
export const FlightRecord = z.object({
  flightId: Id,
  commitment: Digest.nullable(),
  closing: z.object({ closedAt: z.int(), hash: Digest }).nullable(),
  record: PublishedRecord.nullable(),
});
export type FlightRecord = z.infer<typeof FlightRecord>;
