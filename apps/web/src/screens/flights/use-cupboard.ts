import type { Vessel } from "@partsproof/house/protocol";
import { useMemo } from "react";
import { type Asked, useAskAll } from "../../api.ts";
import { useHousehold } from "../../session/index.ts";
import { ethanolPerMl } from "./alcohol-at-most.ts";
import { vesselName } from "./vessel-name.ts";

/** A vessel that a glass can be poured from. */
export interface Pourable {
  readonly vesselId: string;
  /** What stands on the vessel. */
  readonly label: string;
  readonly nameId: string;
  /** What a taster can guess it to be. */
  readonly name: string;
  readonly blend: boolean;
  readonly abv20: number | null;
  /** Millilitres not kept for another flight. */
  readonly freeMl: number;
  readonly ethanolPerMl: number;
}

export interface OfferedName {
  readonly nameId: string;
  readonly label: string;
  readonly freeMl: number;
  /** Of its strongest vessel, in grams a millilitre. */
  readonly ethanolPerMl: number;
}

export interface Cupboard {
  /** Blends first, then bottles, each by name. */
  readonly pourables: readonly Pourable[];
  readonly names: ReadonlyMap<string, OfferedName>;
}

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

function cupboardOf(
  vessels: readonly Vessel[],
  nameOf: (vessel: Vessel) => { readonly nameId: string; readonly label: string },
): Cupboard {
  const pourables = vessels
    .map((vessel): Pourable => {
      const { nameId, label } = nameOf(vessel);
      return {
        vesselId: vessel.id,
        label: vessel.label,
        nameId,
        name: label,
        blend: !nameId.startsWith("whiskey:"),
        abv20: vessel.contents.abv20,
        freeMl: Math.max(0, vessel.contents.volumeMl - vessel.keptMl),
        ethanolPerMl: ethanolPerMl(vessel.contents),
      };
    })
    .filter(({ freeMl }) => freeMl >= 1)
    .toSorted((a, b) => Number(b.blend) - Number(a.blend) || a.name.localeCompare(b.name));
  const names = new Map<string, OfferedName>();
  for (const { nameId, name, freeMl, ethanolPerMl } of pourables) {
    const known = names.get(nameId);
    names.set(nameId, {
      nameId,
      label: name,
      freeMl: freeMl + (known?.freeMl ?? 0),
      ethanolPerMl: Math.max(ethanolPerMl, known?.ethanolPerMl ?? 0),
    });
  }
  return { pourables, names };
}
