import { abv20OfStrength } from "@partsproof/core/alcoholometry";
import type { LabelledWhiskey, TableNote } from "@partsproof/core/palate";
import { keptProfile, type Saying } from "../profiles/index.ts";
import type { WhiskeyRow } from "../rows.ts";
import { type Shelf, strengthOf } from "../shelf/index.ts";
import { batchParts, type PartsOf } from "./parts-of.ts";

/** PA2: whose notes the shelf's own words are. No id of a taster. */
export const THE_SHELF = "shelf";
/** No hand is surer than this of a level. Common practice, no source. */
const SUREST = 0.2;

export interface TableNotes {
  readonly whiskeys: readonly LabelledWhiskey[];
  /** From sheets, and from the shelf. */
  readonly sheets: readonly TableNote[];
  readonly shelf: readonly TableNote[];
  readonly silent: readonly { readonly label: string; readonly why: string }[];
}

/** PA1 to PA3: labels, and notes by what was in the glass. */
export function tableNotes(
  shelf: Shelf,
  sayings: readonly Saying[],
  onWood: ReadonlySet<string>,
): TableNotes {
  const rows = [...shelf.whiskeys.values()].toSorted((a, b) => (a.id < b.id ? -1 : 1));
  const partsOf = batchParts(shelf, onWood);
  const known = new Map<string, ReturnType<PartsOf>>();
  const silent = new Map<string, string>();
  const sheets = sayings.flatMap(({ nameId, label, tasterId, whole }): TableNote[] => {
    const found = known.get(nameId) ?? partsOf(nameId);
    known.set(nameId, found);
    if (typeof found !== "string") return [{ taster: tasterId, parts: found, says: sure(whole) }];
    silent.set(label, found);
    return [];
  });
  return {
    whiskeys: rows.map((row) => ({ id: row.id, label: labelOf(row) })),
    sheets,
    shelf: rows.flatMap((row): TableNote[] => {
      const says = keptProfile(row);
      return Object.keys(says).length === 0
        ? []
        : [{ taster: THE_SHELF, parts: { [row.id]: 1 }, says: sure(says) }];
    }),
    silent: [...silent].map(([label, why]) => ({ label, why })),
  };
}

const sure = (says: TableNote["says"]): TableNote["says"] =>
  Object.fromEntries(
    Object.entries(says).map(([attribute, { mean, sd }]) => [
      attribute,
      { mean: Math.min(10, Math.max(0, mean)), sd: Math.max(SUREST, sd) },
    ]),
  );

/** What its label says; casks that are not known say nothing. */
export function labelOf({ ageYears, strength, kind, grains, casks }: WhiskeyRow): LabelledWhiskey["label"] {
  const stated = casks.filter(({ species, held }) => species !== "not known" && held !== "not known");
  return {
    ageYears,
    abv: abv20OfStrength(strengthOf(strength)),
    kind,
    grains: grains === null ? null : sharesOf(grains),
    casks: stated.length === 0 ? null : stated.map((cask) => ({ ...cask })),
  };
}

function sharesOf(grains: NonNullable<WhiskeyRow["grains"]>): Record<string, number> {
  const shares: Record<string, number> = {};
  for (const { grain, percent } of grains) shares[grain] = (shares[grain] ?? 0) + percent;
  return shares;
}
