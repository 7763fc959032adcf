import { contentsOfVessel, massesOf } from "@partsproof/core/ledger";
import type { Issue } from "../../protocol/index.ts";
import type { Pour } from "./pours.ts";
import type { FlightRow } from "../rows.ts";
import { freeMl, nameOf, type Shelf, volumeIn } from "../shelf/index.ts";

/** What a flight asks of the shelf. */
export interface Asks {
  readonly pours: readonly Pour[];
  readonly distractors: readonly string[];
  /** Glasses that a name offered once stands for, over all tasters. */
  readonly glassesOfName: number;
  readonly pourMl: number;
  /** Grams one taster gets at most of names with these grams a glass, and again of these; strongest first. */
  readonly atMost: (once: readonly number[], again: readonly number[]) => number;
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

/** How often a name is offered, how many of these for a repeat that may be drawn, and glasses of it at most. */
interface Count {
  readonly offered: number;
  readonly again: number;
  readonly glasses: number;
}

/** What each name stands for, over all tasters. */
function countsOf(shelf: Shelf, { pours, distractors, glassesOfName }: Asks): ReadonlyMap<string, Count> {
  const counts = new Map<string, Count>();
  const add = (nameId: string, offered: number, glasses: number) => {
    const so = counts.get(nameId) ?? { offered: 0, again: 0, glasses: 0 };
    counts.set(nameId, {
      offered: so.offered + offered,
      again: so.again + Math.max(0, offered - 1),
      glasses: so.glasses + glasses,
    });
  };
  for (const { vesselId, offered, glasses } of pours) add(nameOf(shelf, vesselId).nameId, offered, glasses);
  for (const nameId of distractors) add(nameId, 1, glassesOfName);
  return counts;
}

/**
 * Names on offer, what is kept back for them, and the most alcohol they allow (F1, F5, F12, Q10).
 *
 * None of the three reads which names are in a glass: each follows from the names on offer, the layout and the shelf alone.
 */
export function offerOf(shelf: Shelf, asks: Asks): Offer {
  const { pourMl, atMost } = asks;
  const names = namesOf(shelf);
  const counts = countsOf(shelf, asks);
  const namesOnOffer = [...counts]
    .map(([nameId, { offered }]) => ({ nameId, label: names.get(nameId)?.label ?? "", count: offered }))
    .toSorted((a, b) => inOrder(a.label, b.label) || inOrder(a.nameId, b.nameId));
  const holds = namesOnOffer
    .flatMap(({ nameId }) =>
      (names.get(nameId)?.vesselIds ?? []).map((vesselId) => ({
        vesselId,
        ml: Math.min(freeMl(shelf, vesselId), pourMl * (counts.get(nameId)?.glasses ?? 0)),
      })),
    )
    .filter(({ ml }) => ml > 0)
    .toSorted((a, b) => inOrder(a.vesselId, b.vesselId));
  const strongest = (times: (name: { readonly offered: number; readonly again: number }) => number) =>
    [...counts]
      .flatMap(([nameId, count]) => {
        const ids = names.get(nameId)?.vesselIds ?? [];
        const each = Math.max(...ids.map((id) => ethanolPerMl(shelf, id)));
        return Array.from({ length: times(count) }, () => each * pourMl);
      })
      .toSorted((a, b) => b - a);
  const once = strongest(({ offered, again }) => offered - again);
  return {
    namesOnOffer,
    holds,
    alcoholAtMostG: atMost(
      once,
      strongest(({ again }) => again),
    ),
  };
}

const inOrder = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** Grams of ethanol in a millilitre (20 °C) of what a vessel holds; 0 for an empty one. */
export function ethanolPerMl(shelf: Shelf, vesselId: string): number {
  const volumeMl = volumeIn(shelf, vesselId);
  return volumeMl > 0 ? massesOf(contentsOfVessel(shelf.state, vesselId)).ethanolG / volumeMl : 0;
}

/** F5: why the shelf cannot serve this flight, glass by glass and distractor by distractor; empty if it can. */
export function shortages(shelf: Shelf, asks: Asks): Issue[] {
  const { pours, distractors, pourMl, glassesOfName } = asks;
  const fits = (vesselId: string) => freeMl(shelf, vesselId) / pourMl + ROUNDING;
  const poured = pours.flatMap(({ vesselId, path }, i) => {
    const glasses = pours
      .slice(0, i + 1)
      .filter((pour) => pour.vesselId === vesselId)
      .reduce((sum, pour) => sum + pour.glasses, 0);
    if (glasses <= fits(vesselId)) return [];
    return [short(path, shelf.vessels.get(vesselId)?.label ?? "", freeMl(shelf, vesselId), pourMl * glasses)];
  });
  if (poured.length > 0) return poured;
  const names = namesOf(shelf);
  const portion = pourMl * glassesOfName;
  const fills = (vesselId: string) => Math.floor(freeMl(shelf, vesselId) / portion + ROUNDING);
  return distractors.flatMap((nameId, i) => {
    const name = names.get(nameId) ?? { label: whiskeyless(shelf, nameId), vesselIds: [] };
    const inGlasses = pours
      .filter(({ vesselId }) => name.vesselIds.includes(vesselId))
      .reduce((sum, { glasses }) => sum + Math.ceil(glasses / glassesOfName), 0);
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
