import type { Read } from "./flag.ts";
import { unread } from "./read-number.ts";

/** A glass of a proposal decided otherwise: whole parts by what they are called; null leaves it out. */
export interface GlassParts {
  readonly glass: number;
  readonly parts: readonly { readonly of: string; readonly count: number }[] | null;
}

const SHAPE =
  "<glass>=<parts>, as they are printed, or none to leave it out, such as 3=2 Barn Door, 1 Sweet Sack";

/** "3=2 Barn Door, 1 Sweet Sack", or "3=none". A comma divides two only before a number: names may have some. */
export const readGlassParts: Read<GlassParts> = (text) => {
  const form = /^\s*(\d{1,2})\s*=\s*(.+?)\s*$/s.exec(text);
  if (form === null) return unread("instead", "instead_unreadable", SHAPE, text);
  const [, glass = "", said = ""] = form;
  if (said.toLowerCase() === "none") return { ok: true, value: { glass: Number(glass), parts: null } };
  const parts = said.split(/,\s*(?=\d+\s)/).map((part) => /^(\d{1,4})\s+(\S.*)$/s.exec(part.trim()));
  if (parts.some((part) => part === null)) return unread("instead", "instead_unreadable", SHAPE, text);
  return {
    ok: true,
    value: {
      glass: Number(glass),
      parts: parts.map((part) => ({ count: Number(part?.[1]), of: (part?.[2] ?? "").trim() })),
    },
  };
};
