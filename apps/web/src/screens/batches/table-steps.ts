import type { Batch } from "@partsproof/house/protocol";

/** Something to do at the table once the batch is poured. */
export interface TableStep {
  readonly id: string;
  readonly says: string;
  /** What may go wrong, and where that is known from. */
  readonly mind?: string;
}

/** Common practice, no source. */
const HAZE_BELOW_ABV = 46;

/**
 * What is left to do with a batch. Every hazard says what it is; where nobody has published it, that it is common practice. `oak` as the
 * recipe says it.
 */
export function tableSteps(batch: Pick<Batch, "made" | "poured" | "restDays">, oak: string): TableStep[] {
  const watered = batch.poured.some(({ label }) => label.toLowerCase() === "water");
  const { abv20 } = batch.made;
  const haze = watered && abv20 !== null && abv20 < HAZE_BELOW_ABV;
  return [
    {
      id: "shake",
      says: "Close it, turn it over ten times, open it, close it again.",
      mind: "Spirit gives off vapour that burns: no flame or spark near it. Common practice, no source: ten turns mix a bottle.",
    },
    ...(watered
      ? [
          {
            id: "cool",
            says: "Wait before you read a level or a strength: until it is as warm as the room.",
            mind: "Spirit and water warm one another when they are mixed, by some degrees, and a warm liquid stands higher. Common practice, no source: half an hour.",
          },
        ]
      : []),
    ...(haze
      ? [
          {
            id: "haze",
            says: "Look through it. A haze is no fault.",
            mind: "A whiskey that was not chill-filtered can go hazy below about 46 % vol, more so when cold: fatty esters fall out. Common practice, no source. It tastes as it did.",
          },
        ]
      : []),
    ...(oak === ""
      ? []
      : [
          {
            id: "oak",
            says: `Put the oak in: ${oak}. Write down when.`,
            mind: "Untreated, food-grade oak only. Crumbs come off it: a paper filter takes them out, and keeps some millilitres. Pour those out of the vessel as a loss.",
          },
        ]),
    { id: "label", says: "Label it: number, strength, date, home use only." },
    ...(batch.restDays === null || batch.restDays === 0
      ? []
      : [
          {
            id: "away",
            says: `Put it away, dark and cool, for ${batch.restDays} days.`,
            mind: "Glass, never lead crystal: spirit takes up lead.",
          },
        ]),
  ];
}
