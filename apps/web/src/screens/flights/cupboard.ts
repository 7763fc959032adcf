import type { Vessel } from "@partsproof/house/protocol";
import { ethanolPerMl } from "./alcohol-at-most.ts";
import type { VesselName } from "./vessel-name.ts";

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

/** What can be poured out of these vessels, and the names it goes by. */
export function cupboardOf(vessels: readonly Vessel[], nameOf: (vessel: Vessel) => VesselName): Cupboard {
  const all = vessels
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
    .toSorted((a, b) => Number(b.blend) - Number(a.blend) || a.name.localeCompare(b.name));
  const names = new Map<string, OfferedName>();
  for (const { nameId, name, freeMl, ethanolPerMl } of all) {
    const known = names.get(nameId);
    names.set(nameId, {
      nameId,
      label: name,
      freeMl: freeMl + (known?.freeMl ?? 0),
      ethanolPerMl: Math.max(ethanolPerMl, known?.ethanolPerMl ?? 0),
    });
  }
  // A name's strongest vessel counts even when nothing of it is free, as the house counts it.
  return { pourables: all.filter(({ freeMl }) => freeMl >= 1), names };
}
