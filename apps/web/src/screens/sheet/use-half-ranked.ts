import { useState } from "react";
import { keep, kept } from "../../session/index.ts";
import type { Tiers } from "./ranking-moves.ts";

/** A ranking that has not every glass yet: the house keeps whole ones only, so this phone keeps it meanwhile. */
export function useHalfRanked(sheetId: string, codes: readonly string[]): [Tiers, (tiers: Tiers) => void] {
  const key = `ranking.${sheetId}`;
  const [tiers, setTiers] = useState<Tiers>(() => readTiers(kept(key), codes));
  return [
    tiers,
    (next) => {
      setTiers(next);
      keep(key, next.length === 0 ? null : JSON.stringify(next));
    },
  ];
}

function readTiers(text: string | null, codes: readonly string[]): Tiers {
  try {
    const tiers = JSON.parse(text ?? "[]") as string[][];
    return tiers.map((tier) => tier.filter((code) => codes.includes(code))).filter((tier) => tier.length > 0);
  } catch {
    return [];
  }
}
