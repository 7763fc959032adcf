/** What a cell came to: what it is, in words where it was guessed, or what it should have been. */
export type Cell<T> =
  | { readonly ok: true; readonly value: T; readonly guessed?: string }
  | { readonly ok: false; readonly code: string; readonly limit: string };

export const is = <T>(value: T, guessed?: string): Cell<T> =>
  guessed === undefined ? { ok: true, value } : { ok: true, value, guessed };
export const not = (
  code: string,
  limit: string,
): { readonly ok: false; readonly code: string; readonly limit: string } => ({
  ok: false,
  code,
  limit,
});

/** What people write where they have nothing to write. */
export const isNothing = (text: string): boolean =>
  /^(?:|-+|–|—|\?|n\/?a|none|nas|unknown|tbd|#n\/a|null|k\.?\s?a\.?)$/iu.test(text.trim());

/**
 * A number with its marks read: of a point and a comma the last is the decimal mark; one alone before exactly three digits could be either,
 * and is null.
 */
export function plainNumber(text: string): number | null {
  const bare = text.replaceAll(/[\s\u00A0\u202F'’]/gu, "");
  if (!/^[+-]?\d[\d.,]*$|^[.,]\d+$/u.test(bare)) return null;
  const [comma, point] = [bare.lastIndexOf(","), bare.lastIndexOf(".")];
  if (comma >= 0 && point >= 0) {
    const [decimal, thousands] = comma > point ? [",", "."] : [".", ","];
    const value = Number(bare.replaceAll(thousands, "").replace(decimal, "."));
    return Number.isFinite(value) ? value : null;
  }
  const mark = comma >= 0 ? "," : ".";
  const parts = bare.split(mark);
  if (parts.length > 2)
    return parts.slice(1).every((part) => part.length === 3) ? Number(parts.join("")) : null;
  return Number(bare.replace(mark, "."));
}
