import { z } from "zod";
import { Id, Instant, ShortText } from "./fields.ts";
import { Currency } from "./household.ts";

/** The household's one file. Rows are the stored rows, table by table; what is sealed stays sealed. */
export const Archive = z.object({
  format: z.literal("partsproof-household"),
  formatVersion: z.literal(1),
  exportedAt: Instant,
  household: z.object({ id: Id.optional(), name: ShortText, currency: Currency, demo: z.boolean() }),
  /** By table: SHA-256 of its canonical form (RFC 8785), in hexadecimal. A file without them is read unchecked. */
  checksums: z.record(z.string(), z.string()).optional(),
  tables: z.record(z.string(), z.array(z.record(z.string(), z.unknown()))),
});
export type Archive = z.infer<typeof Archive>;

/** What is restored; with what a recovery file held, by flight, where flights under way are to go on: docs/archive.md. */
export const RestoreDraft = Archive.extend({
  recovery: z.record(Id, z.string().regex(/^[\w-]{43}$/u, "32 bytes in base64url")).optional(),
});

const Bytes = z.string().regex(/^[\w-]+$/u, "bytes in base64url (RFC 4648, 5)");

/** Keys of flights under way, under a passphrase: docs/archive.md. */
export const RecoveryFile = z.strictObject({
  format: z.literal("partsproof-recovery"),
  formatVersion: z.literal(1),
  household: z.strictObject({ id: Id, name: z.string() }),
  flights: z.array(Id),
  scrypt: z.strictObject({
    N: z
      .int()
      .min(1024)
      .max(2 ** 20),
    r: z.int().min(1).max(16),
    p: z.int().min(1).max(4),
    salt: Bytes,
  }),
  /** AES-256-GCM: nonce, ciphertext and tag. */
  sealed: Bytes,
});
export type RecoveryFile = z.infer<typeof RecoveryFile>;
