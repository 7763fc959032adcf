import { z } from "zod";
import { Id, Instant } from "./fields.ts";

/** NIST SP 800-63B-4 (2025), 3.1.1.2: at least 15 characters where a password is all that is asked for. */
export const PASSPHRASE_LEAST = 15;
const PASSPHRASE_MOST = 256;

/** Any characters, spaces too; nothing is asked of it but its length. */
export const Passphrase = z.string().min(PASSPHRASE_LEAST).max(PASSPHRASE_MOST);
export const PassphraseDraft = z.object({
  passphrase: Passphrase,
  /** The one it replaces; asked for from the network, not on the house's own machine. */
  present: z.string().max(PASSPHRASE_MOST).optional(),
});
export const SignInDraft = z.object({ passphrase: z.string().max(PASSPHRASE_MOST) });

/** Who the house takes a caller for. */
export const DoorShown = z.object({
  /** `here`: on the house's own machine, nothing asked. `owner`: signed in. `stranger`: a guest shows a token where one is asked for. */
  you: z.enum(["here", "owner", "stranger"]),
  passphraseSet: z.boolean(),
  passphraseAtLeast: z.int(),
});
export type DoorShown = z.infer<typeof DoorShown>;

/** One line of what happened at the door and to flights, for the owner. */
export const TrailLine = z.object({
  id: Id,
  at: Instant,
  what: z.string(),
  /** Where it came from; null on the house's own machine. */
  address: z.string().nullable(),
  householdId: Id.nullable(),
  flightId: Id.nullable(),
});
export type TrailLine = z.infer<typeof TrailLine>;
