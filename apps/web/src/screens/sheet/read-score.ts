/** Reads a score as people type it: "87", "87.5" or "87,5", 0 to 100; nothing typed is no score. */
export function readScore(
  text: string,
): { readonly ok: true; readonly score: number | null } | { readonly ok: false; readonly why: string } {
  const typed = text.trim();
  if (typed === "") return { ok: true, score: null };
  const score = /^\d+(?:[.,]\d+)?$/.test(typed) ? Number(typed.replace(",", ".")) : Number.NaN;
  return score >= 0 && score <= 100
    ? { ok: true, score }
    : { ok: false, why: `a score requires a number from 0 to 100, got ${typed}; it is not saved` };
}
