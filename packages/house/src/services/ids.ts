import type { House } from "./ports.ts";
import { Remembered } from "./remembered.ts";

const ALPHABET = "0123456789abcdefghjkmnpqrstvwxyz";

/** 26 characters: 48 bits of time, then 80 random bits, five bits a character (Crockford's alphabet). Sorts by birth. */
export function newId(house: Pick<House, "clock" | "random">): string {
  let time = house.clock.now().getTime();
  let head = "";
  for (let i = 0; i < 10; i++) {
    head = ALPHABET[time % 32] + head;
    time = Math.floor(time / 32);
  }
  let tail = "";
  for (const byte of house.random.bytes(16)) tail += ALPHABET[byte & 31];
  return head + tail;
}

/** 32 random bytes as hex: a bearer token. */
export function newToken(house: Pick<House, "random">): string {
  return hex(house.random.bytes(32));
}

/** A token comes with every request of its holder, mostly in the middle of a transaction that others wait for. */
const hashes = new Remembered<Promise<string>>();

/** SHA-256 of a token, as hex: what is stored of it. */
export function hashToken(token: string): Promise<string> {
  const hash = hashes.get(token) ?? sha256Hex(token);
  hashes.set(token, hash);
  return hash;
}

const sha256Hex = async (text: string): Promise<string> =>
  hex(new Uint8Array(await crypto.subtle.digest("SHA-256", new TextEncoder().encode(text))));

function hex(bytes: Uint8Array): string {
  return [...bytes].map((b) => b.toString(16).padStart(2, "0")).join("");
}
