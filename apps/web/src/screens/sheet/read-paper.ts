import type { Tiers } from "./ranking-moves.ts";

export type ReadPaper<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly why: string };

const said = (text: string): string => `got ${text.trim() === "" ? "none" : text.trim()}`;

/** An order as it is typed from paper: "724 468=542 437", best first, level ones joined by "="; null for none. */
export function readOrder(text: string, codes: readonly string[], ties: boolean): ReadPaper<Tiers | null> {
  const typed = text.trim();
  if (typed === "") return { ok: true, value: null };
  const tiers = typed
    .replaceAll(/\s*=\s*/g, "=")
    .split(/[\s,;>]+/)
    .map((tier) => tier.split("=").filter((code) => code !== ""))
    .filter((tier) => tier.length > 0);
  const flat = tiers.flat();
  const unknown = flat.find((code) => !codes.includes(code));
  const wrong = (limit: string, got: string) => ({
    ok: false as const,
    why: `an order requires ${limit}, got ${got}`,
  });
  if (unknown !== undefined) return wrong(`the numbers ${codes.join(", ")}`, unknown);
  const twice = flat.find((code, i) => flat.indexOf(code) < i);
  if (twice !== undefined) return wrong("every number once", `${twice} twice`);
  if (!ties && tiers.some((tier) => tier.length > 1)) return wrong("no two level", typed);
  const missing = codes.filter((code) => !flat.includes(code));
  return missing.length > 0
    ? wrong("every number once", `none for ${missing.join(", ")}`)
    : { ok: true, value: tiers };
}

/** The glasses picked in a set as typed from paper: one, or two of four; none for no answer. */
export function readPicks(text: string, codes: readonly string[]): ReadPaper<readonly string[]> {
  const picked = text.split(/[\s,;=&+]+/).filter((code) => code !== "");
  if (picked.length === 0) return { ok: true, value: [] };
  const count = codes.length === 4 ? 2 : 1;
  const right =
    picked.length === count && new Set(picked).size === count && picked.every((code) => codes.includes(code));
  return right
    ? { ok: true, value: picked }
    : { ok: false, why: `an answer requires ${count} of ${codes.join(", ")}, ${said(text)}` };
}

/** An order as it would be typed. */
export const orderText = (order: Tiers | null): string =>
  order?.map((tier) => tier.join("=")).join(" ") ?? "";
