import { hashToken } from "../ids.ts";
import { refuse } from "../refuse.ts";

/** Whether two hashes are equal, in a time that depends on their lengths only. */
export function sameHash(a: string, b: string): boolean {
  let difference = a.length ^ b.length;
  for (let i = 0; i < b.length; i += 1) difference |= a.charCodeAt(i % a.length) ^ b.charCodeAt(i);
  return difference === 0;
}

/** Whether a token came and its hash is the stored one. */
export async function tokenFits(token: string | null, stored: string | null): Promise<boolean> {
  if (token === null) return false;
  // A hash is computed and compared also where none is stored, so that the time does not tell it.
  const fits = sameHash(await hashToken(token), stored ?? "0".repeat(64));
  return fits && stored !== null;
}

/** F14: 401 where no token came, 403 where it is not the stored one or there is none. */
export async function needToken(token: string | null, stored: string | null): Promise<void> {
  if (token === null) {
    refuse(401, {
      code: "token_needed",
      path: ["authorization"],
      limit: "a bearer token of 64 hexadecimal digits",
      received: null,
      message: "this route requires a bearer token, got none",
    });
  }
  if (!(await tokenFits(token, stored))) {
    refuse(403, {
      code: "token_wrong",
      path: ["authorization"],
      limit: "the token for this",
      // The token itself is not said back: answers end up in logs.
      received: "another token",
      message: "this route requires its own token, got another one",
    });
  }
}
