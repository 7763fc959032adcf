import { contentsOfVessel, massesOf } from "@partsproof/core/ledger";
import type { Issue } from "../../protocol/index.ts";
import type { FlightRow } from "../rows.ts";
import { freeMl, nameOf, type Shelf, volumeIn } from "../shelf/index.ts";

/** What a flight asks of the shelf. */
export interface Asks {
  readonly glasses: readonly { readonly vesselId: string }[];
  readonly distractors: readonly string[];
  readonly pourMl: number;
  readonly tasters: number;
}

interface Name {
  readonly label: string;
  readonly vesselIds: readonly string[];
}

export type Offer = Pick<FlightRow, "namesOnOffer" | "holds" | "alcoholAtMostG">;

/** Free liquid may fall short of a whole number of glasses by this share, from rounding of sums. */
const ROUNDING = 1e-9;

/** Every name that some vessel of the shelf answers to, with all the vessels that do. */
function namesOf(shelf: Shelf): ReadonlyMap<string, Name> {
  const names = new Map<string, Name>();
  for (const id of [...shelf.vessels.keys()].toSorted()) {
    const { nameId, label } = nameOf(shelf, id);
    names.set(nameId, { label, vesselIds: [...(names.get(nameId)?.vesselIds ?? []), id] });
  }
  return names;
}

/**
 * Names on offer, what is kept back for them, and the most alcohol they allow (F1, F5, F12).
 *
 * None of the three reads which names are in a glass: each follows from the names on offer and the shelf alone.
 */
export function offerOf(shelf: Shelf, { glasses, distractors, pourMl, tasters }: Asks): Offer {
  const names = namesOf(shelf);
  const counts = new Map<string, number>();
  for (const nameId of [...glasses.map(({ vesselId }) => nameOf(shelf, vesselId).nameId), ...distractors]) {
    counts.set(nameId, (counts.get(nameId) ?? 0) + 1);
  }
  const namesOnOffer = [...counts]
    .map(([nameId, count]) => ({ nameId, label: names.get(nameId)?.label ?? "", count }))
    .toSorted((a, b) => inOrder(a.label, b.label) || inOrder(a.nameId, b.nameId));
  const holds = namesOnOffer
    .flatMap(({ nameId, count }) =>
      (names.get(nameId)?.vesselIds ?? []).map((vesselId) => ({
        vesselId,
        ml: Math.min(freeMl(shelf, vesselId), pourMl * count * tasters),
      })),
    )
    .filter(({ ml }) => ml > 0)
    .toSorted((a, b) => inOrder(a.vesselId, b.vesselId));
  const strongest = namesOnOffer
    .flatMap(({ nameId, count }) => {
      const each = Math.max(...(names.get(nameId)?.vesselIds ?? []).map((id) => ethanolPerMl(shelf, id)));
      return Array.from({ length: count }, () => each * pourMl);
    })
    .toSorted((a, b) => b - a)
    .slice(0, glasses.length);
  return { namesOnOffer, holds, alcoholAtMostG: strongest.reduce((sum, grams) => sum + grams, 0) };
}

const inOrder = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** Grams of ethanol in a millilitre (20 °C) of what a vessel holds; 0 for an empty one. */
export function ethanolPerMl(shelf: Shelf, vesselId: string): number {
  const volumeMl = volumeIn(shelf, vesselId);
  return volumeMl > 0 ? massesOf(contentsOfVessel(shelf.state, vesselId)).ethanolG / volumeMl : 0;
}

/** F5: why the shelf cannot serve this flight, glass by glass and distractor by distractor; empty if it can. */
export function shortages(shelf: Shelf, { glasses, distractors, pourMl, tasters }: Asks): Issue[] {
  const portion = pourMl * tasters;
  const fills = (vesselId: string) => Math.floor(freeMl(shelf, vesselId) / portion + ROUNDING);
  const poured = glasses.flatMap(({ vesselId }, i) => {
    const times = glasses.slice(0, i + 1).filter((glass) => glass.vesselId === vesselId).length;
    if (times <= fills(vesselId)) return [];
    const label = shelf.vessels.get(vesselId)?.label ?? "";
    return [short(["glasses", i, "vesselId"], label, freeMl(shelf, vesselId), portion * times)];
  });
  if (poured.length > 0) return poured;
  const names = namesOf(shelf);
  return distractors.flatMap((nameId, i) => {
    const name = names.get(nameId) ?? { label: whiskeyless(shelf, nameId), vesselIds: [] };
    const inGlasses = glasses.filter(({ vesselId }) => name.vesselIds.includes(vesselId)).length;
    const times = inGlasses + distractors.slice(0, i + 1).filter((other) => other === nameId).length;
    if (times <= name.vesselIds.reduce((sum, id) => sum + fills(id), 0)) return [];
    const free = name.vesselIds.reduce((sum, id) => sum + freeMl(shelf, id), 0);
    return [short(["distractors", i], name.label, free, portion * times)];
  });
}

/** A name that no vessel answers to is at best a whiskey without a bottle. */
const whiskeyless = (shelf: Shelf, nameId: string): string =>
  shelf.whiskeys.get(nameId.slice(nameId.indexOf(":") + 1))?.name ?? nameId;

function short(path: Issue["path"], label: string, freeMlThere: number, needMl: number): Issue {
  const free = Number(freeMlThere.toFixed(1));
  const need = Number(needMl.toFixed(1));
  return {
    code: "vessel_short",
    path,
    limit: `${free} mL free`,
    received: need,
    message: `offering ${label} requires at most the ${free} mL free of it, got ${need} mL for all tasters`,
  };
}
