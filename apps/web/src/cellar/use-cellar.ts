import type { Facts } from "@partsproof/core/ledger";
import type { Batch, Whiskey } from "@partsproof/house/protocol";
import { useMemo } from "react";
import { type Asked, useAskAll } from "../api.ts";
import { useHousehold } from "../session/index.ts";
import { factsOf, type Stock, stockOfContents, stockOfWhiskey, type Stocks } from "../mixing/index.ts";

export interface Cellar {
  readonly whiskeys: readonly Whiskey[];
  readonly batches: readonly Batch[];
  readonly stocks: Stocks;
  readonly facts: Facts;
}

/** Every whiskey and batch of the household, ready to be mixed in the browser. */
export function useCellar(): Asked<Cellar> {
  const at = { household: useHousehold().id };
  const whiskeys = useAskAll("listWhiskeys", { at });
  const batches = useAskAll("listBatches", { at });
  const cellar = useMemo(
    () =>
      whiskeys.answer === undefined || batches.answer === undefined
        ? null
        : cellarOf(whiskeys.answer, batches.answer),
    [whiskeys.answer, batches.answer],
  );
  const again = (): void => {
    whiskeys.again();
    batches.again();
  };
  const refusal = whiskeys.refusal ?? batches.refusal;
  if (cellar !== null) return { state: "here", answer: cellar, refusal, again };
  if (refusal !== null) return { state: "broken", answer: undefined, refusal, again };
  return { state: "busy", answer: undefined, refusal: null, again };
}

function cellarOf(whiskeys: readonly Whiskey[], batches: readonly Batch[]): Cellar {
  const stocks = new Map<string, Stock>();
  for (const whiskey of whiskeys) stocks.set(`whiskey:${whiskey.id}`, stockOfWhiskey(whiskey));
  for (const batch of batches) {
    const stock = stockOfContents(batch.name, batch.now) ?? stockOfContents(batch.name, batch.made);
    if (stock !== null) stocks.set(`batch:${batch.id}`, stock);
  }
  return { whiskeys, batches, stocks, facts: factsOf(whiskeys) };
}
