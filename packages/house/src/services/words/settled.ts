import type { Meaning } from "../../protocol/index.ts";
import type { TaughtWordRow } from "../rows.ts";

/** A phrase as the household has it. */
export interface SettledWord {
  readonly phrase: string;
  readonly means: Meaning | null;
  readonly state: "in use" | "two ways" | "forgotten";
  readonly otherwise: readonly Meaning[];
  /** Oldest first. */
  readonly rows: readonly TaughtWordRow[];
}

/** When each revealed flight was revealed: what was taught in any other is nobody's but its sheet's. */
export type Revealed = ReadonlyMap<string, string>;

/** V2: the rows that all of the household may see, oldest first. */
const openRows = (rows: readonly TaughtWordRow[], revealed: Revealed): readonly TaughtWordRow[] =>
  rows
    .filter(({ flightId }) => flightId === null || revealed.has(flightId))
    .toSorted((a, b) => a.number - b.number);

/**
 * V3: what the rows come to, phrase by phrase. What the household itself last said holds; sheets teach where it has said nothing since,
 * if all who taught the phrase mean the same by it.
 */
export function settled(rows: readonly TaughtWordRow[], revealed: Revealed): readonly SettledWord[] {
  const byPhrase = Map.groupBy(openRows(rows, revealed), ({ phrase }) => phrase);
  return [...byPhrase]
    .map(([phrase, own]) => settledWord(phrase, own, revealed))
    .toSorted((a, b) => (a.phrase < b.phrase ? -1 : 1));
}

function settledWord(phrase: string, rows: readonly TaughtWordRow[], revealed: Revealed): SettledWord {
  const house = rows.findLast(({ sheetId }) => sheetId === null);
  const unseen = rows.filter(
    ({ number, sheetId, flightId }) =>
      sheetId !== null &&
      (house === undefined ||
        number > house.number ||
        (revealed.get(flightId ?? "") ?? "") > house.createdAt),
  );
  // The last word of each taster; one who took it back says nothing.
  const lastOf = new Map(unseen.map(({ tasterId, means }) => [tasterId, means as Meaning | null]));
  const said = [...new Set(lastOf.values())].filter((means): means is Meaning => means !== null).toSorted();
  const [only] = said;
  if (house !== undefined && house.means !== null) {
    const means = house.means as Meaning;
    return { phrase, means, state: "in use", otherwise: said.filter((other) => other !== means), rows };
  }
  if (only === undefined) return { phrase, means: null, state: "forgotten", otherwise: [], rows };
  return said.length === 1
    ? { phrase, means: only, state: "in use", otherwise: [], rows }
    : { phrase, means: null, state: "two ways", otherwise: said, rows };
}
