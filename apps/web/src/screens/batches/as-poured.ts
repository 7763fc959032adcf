import { type Description, type Measure, mixDescription, type Facts, WATER } from "@partsproof/core/ledger";
import type { Pour, Vessel } from "@partsproof/house/protocol";
import { stockOfContents } from "../../mixing/index.ts";
import { strengthGive } from "../../mixing/index.ts";

export interface AsPoured {
  readonly result: Description;
  readonly give: number;
}

const WATER_G_PER_ML = 0.9982;

/** What the pours come to, from what each vessel holds now; null where a vessel is not known or holds nothing. */
export function asPoured(
  pours: readonly Pour[],
  vessels: ReadonlyMap<string, Vessel>,
  facts: Facts,
): AsPoured | null {
  const measures: Measure[] = [];
  const strengths: { ml: number; abv20: number }[] = [];
  for (const { from, amount } of pours) {
    if (from.kind === "water") {
      const ml = amount.kind === "volume" ? amount.ml : amount.g / WATER_G_PER_ML;
      measures.push({ liquidId: WATER, volumeMl: ml, abv20: 0, cost: 0 });
      strengths.push({ ml, abv20: 0 });
      continue;
    }
    const contents = vessels.get(from.vesselId)?.contents;
    const stock = contents === undefined ? null : stockOfContents("", contents);
    if (contents === undefined || stock === null) return null;
    const ml = amount.kind === "volume" ? amount.ml : (amount.g * contents.volumeMl) / contents.massG;
    strengths.push({ ml, abv20: stock.abv20 });
    for (const one of stock.perMl) {
      measures.push({ ...one, volumeMl: one.volumeMl * ml, cost: one.cost === null ? null : one.cost * ml });
    }
  }
  const result = mixDescription(measures, facts);
  return result.abv20 === null ? null : { result, give: strengthGive(strengths) };
}
