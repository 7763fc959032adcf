import type { Ticket } from "../../protocol/index.ts";
import { sameHash } from "../flights/index.ts";
import { keyedHash } from "../keyed-hash.ts";
import type { House, Records } from "../ports.ts";
import type { JoiningRow } from "../rows.ts";

/** Crockford's alphabet without a letter twice: 5 bits a character, nothing that is read as something else. */
const ALPHABET = "0123456789abcdefghjkmnpqrstvwxyz";
/** 8 characters: 40 bits. */
const CODE_CHARACTERS = 8;

export function newCode(house: Pick<House, "random">): string {
  return [...house.random.bytes(CODE_CHARACTERS)].map((byte) => ALPHABET.charAt(byte & 31)).join("");
}

/** As it is shown: two groups of four, capitals. */
export const shownCode = (code: string): string => `${code.slice(0, 4)}-${code.slice(4)}`.toUpperCase();

/** J2: what was typed, as it was drawn. */
const typedCode = (typed: string): string =>
  typed.toLowerCase().replaceAll(/[\s-]/g, "").replaceAll("o", "0").replaceAll(/[il]/g, "1");

export const linkHash = (house: House, link: string): Promise<string> => keyedHash(house, "join link", link);
export const codeHash = (house: House, code: string): Promise<string> => keyedHash(house, "join code", code);
export const ticketHash = (house: House, ticket: Ticket): Promise<string> =>
  ticket.kind === "link" ? linkHash(house, ticket.link) : codeHash(house, typedCode(ticket.code));

const NONE = "0".repeat(64);

/**
 * The joining that a ticket opens, or null. Every open joining of the house is compared, in a time that does not
 * depend on whether or how nearly one fits.
 */
export async function joiningOf(
  records: Records,
  house: Pick<House, "clock">,
  kind: Ticket["kind"],
  hash: string,
): Promise<JoiningRow | null> {
  let found: JoiningRow | null = null;
  for (const { id } of await records.households()) {
    for (const joining of await records.list("joining", id, { where: { closedAt: null } })) {
      const stored = kind === "link" ? joining.linkHash : (joining.codeHash ?? NONE);
      if (sameHash(hash, stored)) found = joining;
    }
  }
  return found !== null && Date.parse(found.expiresAt) > house.clock.now().getTime() ? found : null;
}
