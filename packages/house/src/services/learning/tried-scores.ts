import type { FlightEvidence } from "../evidence/index.ts";

/** A score of one glass, 0 to 100, by its name. */
export interface NamedMark {
  readonly id: string;
  readonly mark: number;
}

/** Least and most that a sheet takes as a score. */
export const SCORES = [0, 100] as const;

/**
 * The scores of a sheet by what was in the glass; none where they are not of what is sought. On a sheet that asks how close each glass
 * comes, a score may have been of liking: it is taken for closeness only where no glass stands above another with a higher score.
 */
export function scoresOf(
  { question, glasses }: Pick<FlightEvidence, "question" | "glasses">,
  { order, scores }: FlightEvidence["sheets"][number],
  orders: readonly (readonly (readonly string[])[])[],
): readonly NamedMark[] {
  const marks = order.flatMap((glass, place): NamedMark[] => {
    const [id, mark] = [glasses[glass]?.nameId, scores[place] ?? null];
    return id === undefined || mark === null ? [] : [{ id, mark }];
  });
  return question === "how_close" && !orders.every((places) => agrees(places, marks)) ? [] : marks;
}

/** Whether nothing is put behind what has a lower score. A glass poured twice stands anywhere between its scores. */
function agrees(places: readonly (readonly string[])[], marks: readonly NamedMark[]): boolean {
  const of = (name: string): number[] => marks.filter(({ id }) => id === name).map(({ mark }) => mark);
  return places.every((ahead, p) =>
    places
      .slice(p + 1)
      .flat()
      .every((behind) =>
        ahead.every((name) => {
          const [own, other] = [of(name), of(behind)];
          return own.length === 0 || other.length === 0 || Math.max(...own) >= Math.min(...other);
        }),
      ),
  );
}
