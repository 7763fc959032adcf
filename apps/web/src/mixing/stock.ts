import { abv20FromMassFraction, describeLiquid, massFractionFromAbv20 } from "@partsproof/core/alcoholometry";
import { abv20, grams } from "@partsproof/core/quantity";
import type { Facts, LiquidFacts, Measure } from "@partsproof/core/ledger";
import type { Contents, Slot, Whiskey } from "@partsproof/house/protocol";

/** What can stand in a slot: a whiskey or a batch made before. */
export interface Stock {
  readonly label: string;
  readonly abv20: number;
  /** What one millilitre of it is made of; a whiskey is made of itself. */
  readonly perMl: readonly Measure[];
}

/** By slot key, see `slotKey`. */
export type Stocks = ReadonlyMap<string, Stock>;

export function slotKey(of: Slot["of"]): string {
  if (of.kind === "open") return "open";
  return of.kind === "whiskey" ? `whiskey:${of.whiskeyId}` : `batch:${of.batchId}`;
}

/** The inverse of `slotKey`; of an open slot, without the name that it had elsewhere. */
export function slotOfKey(key: string): Slot["of"] {
  if (key === "open") return { kind: "open", named: null };
  const [kind, id = ""] = key.split(":", 2);
  return kind === "batch" ? { kind: "batch", batchId: id } : { kind: "whiskey", whiskeyId: id };
}

export function whiskeyLabel(whiskey: Pick<Whiskey, "maker" | "name" | "release">): string {
  return [whiskey.maker, whiskey.name, whiskey.release].filter(Boolean).join(" ");
}

export function stockOfWhiskey(whiskey: Whiskey): Stock {
  const cost = whiskey.priceMinor === null ? null : whiskey.priceMinor / whiskey.bottleMl;
  return {
    label: whiskeyLabel(whiskey),
    abv20: whiskey.abv20,
    perMl: [{ liquidId: whiskey.id, volumeMl: 1, abv20: whiskey.abv20, cost }],
  };
}

/**
 * A blend as stock: its whiskeys by their masses in one millilitre. The cost is known for the blend as a whole only, so
 * the first liquid carries all of it; where any of it is unpriced none is told. Null when the vessel is empty.
 */
export function stockOfContents(label: string, contents: Contents): Stock | null {
  if (contents.abv20 === null || !(contents.volumeMl > 0)) return null;
  const ethanolG = contents.massG * massFractionFromAbv20(abv20(contents.abv20));
  const costPerMl = contents.cost.perLitreMinor === null ? null : contents.cost.perLitreMinor / 1000;
  const perMl = contents.composition.map((one, i): Measure => {
    const ethanol = one.shareOfAlcohol * ethanolG;
    const water = Math.max(0, one.shareOfMass * contents.massG - ethanol);
    const alone = describeLiquid({ ethanolG: grams(ethanol), waterG: grams(water) });
    const strength =
      one.liquidId === "water" || alone.massFraction === null ? 0 : abv20FromMassFraction(alone.massFraction);
    return {
      liquidId: one.liquidId,
      volumeMl: alone.volumeMl / contents.volumeMl,
      abv20: strength,
      cost: costPerMl === null ? null : i === 0 ? costPerMl : 0,
    };
  });
  return { label, abv20: contents.abv20, perMl };
}

export function factsOf(whiskeys: readonly Whiskey[]): Facts {
  return new Map(
    whiskeys.map((whiskey): [string, LiquidFacts] => [
      whiskey.id,
      {
        ageYears: whiskey.ageYears,
        grains: whiskey.grains?.map(({ grain, percent }) => ({ grain, share: percent / 100 })) ?? null,
        casks: whiskey.casks,
      },
    ]),
  );
}
