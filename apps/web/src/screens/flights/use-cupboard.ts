import { useMemo } from "react";
import { type Asked, useAskAll } from "../../api.ts";
import { useHousehold } from "../../session/index.ts";
import { type Cupboard, cupboardOf } from "./cupboard.ts";
import { vesselName } from "./vessel-name.ts";

/** What stands on the shelf to be poured, with the names it goes by. */
export function useCupboard(): Asked<Cupboard> {
  const at = { household: useHousehold().id };
  const vessels = useAskAll("listVessels", { at });
  const whiskeys = useAskAll("listWhiskeys", { at });
  const batches = useAskAll("listBatches", { at });
  const cupboard = useMemo(() => {
    if (!vessels.answer || !whiskeys.answer || !batches.answer) return null;
    const byWhiskey = new Map(whiskeys.answer.map((one) => [one.id, one]));
    const byBatch = new Map(batches.answer.map((one) => [one.id, one]));
    return cupboardOf(vessels.answer, (vessel) => vesselName(vessel, byWhiskey, byBatch));
  }, [vessels.answer, whiskeys.answer, batches.answer]);
  const all = [vessels, whiskeys, batches];
  const again = (): void => {
    for (const one of all) one.again();
  };
  const refusal = all.find((one) => one.refusal !== null)?.refusal ?? null;
  if (cupboard !== null) return { state: "here", answer: cupboard, refusal, again };
  if (refusal !== null) return { state: "broken", answer: undefined, refusal, again };
  return { state: "busy", answer: undefined, refusal: null, again };
}
