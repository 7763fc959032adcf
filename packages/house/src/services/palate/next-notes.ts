import { type Particular, type Pourable, teachesMost, whyItTeaches } from "@partsproof/core/palate";
import { attributeName } from "@partsproof/core/sensory";
import type { PalateBoard, TaughtByNote } from "../../protocol/index.ts";
import { LEVEL } from "../profiles/index.ts";
import { freeMl, nameOf, type Shelf, whiskeyLabel } from "../shelf/index.ts";
import type { HangingRecipes } from "./hanging-recipes.ts";
import type { LearnedHere } from "./learned-here.ts";
import { batchParts } from "./parts-of.ts";
import { toldOf } from "./told-of.ts";

/** Less than this of a liquid pours no glass. */
const LEAST_ML = 10;

interface NextNotes {
  readonly next: readonly TaughtByNote[];
  readonly doubt: PalateBoard["doubt"];
}

/** PA5: whose next note would teach most about the whiskeys that can be poured. */
export function nextNotes(
  shelf: Shelf,
  here: LearnedHere,
  { onWood, hanging }: { readonly onWood: ReadonlySet<string>; readonly hanging: HangingRecipes },
): NextNotes {
  const { levels } = here;
  const partsOf = batchParts(shelf, onWood);
  const glasses = new Map<
    string,
    Pourable & { readonly label: string; readonly vesselId: string; readonly ml: number }
  >();
  for (const { id: vesselId } of shelf.vessels.values()) {
    const ml = freeMl(shelf, vesselId);
    if (shelf.trialVials.has(vesselId) || ml < LEAST_ML) continue;
    const { nameId, label } = nameOf(shelf, vesselId);
    const parts = partsOf(nameId);
    if (typeof parts === "string" || ml <= (glasses.get(nameId)?.ml ?? 0)) continue;
    glasses.set(nameId, { id: nameId, label, parts, vesselId, ml });
  }
  const about = [...new Set([...glasses.values()].flatMap(({ parts }) => Object.keys(parts)))].toSorted();
  const { glasses: found, before } = teachesMost(levels, [...glasses.values()], about);
  const particular: Particular = {
    whiskey: (id: string): string => {
      const row = shelf.whiskeys.get(id);
      return row === undefined ? id : whiskeyLabel(row);
    },
    attribute: attributeName,
    toldOf: (id) => toldOf(here, id),
    recipes: (id) => hanging.get(id) ?? [],
    level: LEVEL,
  };
  return {
    doubt: { sd: before, whiskeys: about.length, attributes: levels.attributes.length },
    next: found.flatMap((taught): TaughtByNote[] => {
      const glass = glasses.get(taught.id);
      if (glass === undefined || taught.share <= 0) return [];
      return [
        {
          key: glass.id,
          label: glass.label,
          parts: { ...glass.parts },
          vesselId: glass.vesselId,
          share: taught.share,
          off: { ...taught.own },
          why: whyItTeaches(levels, glass, taught, particular),
          attributes: taught.attributes.slice(0, 3).map(({ id, share }) => ({ attribute: id, share })),
        },
      ];
    }),
  };
}
