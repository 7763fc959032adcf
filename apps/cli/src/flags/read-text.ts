import type { Read } from "./flag.ts";
import { unread } from "./read-number.ts";

/** Any text that is not blank. */
export const readText =
  (what: string): Read<string> =>
  (text) => {
    if (text.trim() === "") return unread(what, "text_missing", "some text", text);
    return { ok: true, value: text.trim() };
  };

/** Any text, blank too: taken as it is. */
export const readAnyText: Read<string> = (text) => ({ ok: true, value: text });

/** One of a few words, whatever the case. */
export const readWord =
  <const W extends string>(what: string, words: readonly W[]): Read<W> =>
  (text) => {
    const word = words.find((w) => w.toLowerCase() === text.trim().toLowerCase());
    if (word !== undefined) return { ok: true, value: word };
    return unread(what, "unknown_word", `one of ${words.join(", ")}`, text);
  };

/** The address of a house: http or https. */
export const readAddress: Read<string> = (text) => {
  const url = URL.parse(text);
  if (url !== null && /^https?:$/.test(url.protocol) && url.pathname + url.search + url.hash === "/") {
    return { ok: true, value: url.origin };
  }
  return unread("house", "address_unreadable", "an address such as http://127.0.0.1:4480", text);
};

/** A token is as good as a key, so a wrong one is not repeated back. */
export const readToken: Read<string> = (text) => {
  if (/^[0-9a-f]{64}$/.test(text.trim())) return { ok: true, value: text.trim() };
  const limit = "64 characters of 0-9 a-f";
  const received = `${text.length} characters, not shown`;
  return {
    ok: false,
    issue: { code: "token_unreadable", limit, received, message: `token requires ${limit}, got ${received}` },
  };
};
