import { compositionAt, type KeptUp as Folded, type KeptUpPart, youngestAt } from "@partsproof/core/kept-up";
import { describeLiquid } from "@partsproof/core/alcoholometry";
import { DAY_MS, grams } from "@partsproof/core/quantity";
import type { KeptUp } from "../../protocol/index.ts";
import type { Kept } from "./steps-of.ts";

type Point = KeptUp["course"][number];

/** U2: some steps with what is in the bottle after each; every addition while there is room, the last step always. */
export function courseOf(
  folded: Folded,
  { steps, additions }: Kept,
  points: number,
  liquids: readonly string[],
  ages: ReadonlyMap<string, number | null>,
  start: number,
): Point[] {
  return chosen(
    steps.length,
    additions.map(({ steps: [, last] }) => last),
    points,
  ).map((step) => {
    const parts = compositionAt(folded, step);
    const { abv20 } = describeLiquid({
      ethanolG: grams(folded.ethanolG[step] ?? 0),
      waterG: grams(folded.waterG[step] ?? 0),
    });
    return {
      at: new Date(start + (steps[step]?.at ?? 0) * DAY_MS).toISOString(),
      volumeMl: folded.volumeMl[step] ?? 0,
      abv20,
      parts: sharesOf(parts, liquids),
      youngestYears: youngestAt(folded, step, ages),
    };
  });
}

/** Shares of the mass, in the order of the liquids: so that water is seen too. */
function sharesOf(parts: readonly KeptUpPart[], liquids: readonly string[]): number[] {
  const mass = parts.reduce((sum, { ethanolG, waterG }) => sum + ethanolG + waterG, 0);
  const held = new Map(parts.map(({ liquidId, ethanolG, waterG }) => [liquidId, ethanolG + waterG]));
  return liquids.map((id) => (mass > 0 ? (held.get(id) ?? 0) / mass : 0));
}

/** Numbers of steps, ascending. */
function chosen(count: number, additions: readonly number[], points: number): number[] {
  if (count <= points) return Array.from({ length: count }, (_, i) => i);
  const evenly = (all: number, most: number): number[] =>
    Array.from({ length: Math.min(all, most) }, (_, i) =>
      Math.round((i * (all - 1)) / Math.max(1, Math.min(all, most) - 1)),
    );
  const half = Math.floor((points - 1) / 2);
  const added = evenly(additions.length, half).map((i) => additions[i] ?? 0);
  return [...new Set([...added, ...evenly(count, points - added.length - 1), count - 1])].toSorted(
    (a, b) => a - b,
  );
}
