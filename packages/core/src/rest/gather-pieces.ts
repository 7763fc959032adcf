import { LEAST_RATIO, type RestSettings, type WoodIn } from "./question.ts";

/**
 * Pieces as few as they can be said: those of one kind and the same days are one of their summed area, and what came out as it went
 * in was never in. Wood that all went in on day 0 and stays is no piece but the conditions of the whole rest, reckoned exactly as such.
 */
export function gatherPieces({ pieces, ...settings }: RestSettings): RestSettings {
  if (pieces === undefined) return settings;
  const kinds = new Map<string, WoodIn>();
  for (const piece of pieces) {
    if (piece.outDay === piece.inDay) continue;
    const { caskRatio, thicknessCm, use, inDay, outDay } = piece;
    const kind = [thicknessCm, use, inDay, outDay].join(" ");
    kinds.set(kind, { ...piece, caskRatio: caskRatio + (kinds.get(kind)?.caskRatio ?? 0) });
  }
  const gathered = [...kinds.values()];
  const [one] = gathered;
  if (one === undefined) return { ...settings, pieces: pieces.slice(0, 1) };
  const { inDay, outDay, ...wood } = one;
  if (gathered.length === 1 && inDay === 0 && outDay === null && wood.caskRatio >= LEAST_RATIO)
    return { ...settings, conditions: { ...settings.conditions, ...wood } };
  return { ...settings, pieces: gathered };
}
