import { abv20OfStrength } from "@partsproof/core/alcoholometry";
import { eachOnce } from "@partsproof/core/learning";
import { type Contents as Held, contentsOfVessel } from "@partsproof/core/ledger";
import { SMALLEST_POUR_ML } from "@partsproof/core/sensory";
import { NEXT_LIMITS, poursFor, type TriedHistory } from "../../protocol/index.ts";
import { isStock } from "../batches/index.ts";
import type { FlightEvidence } from "../evidence/index.ts";
import { type LearnedHere, levelsOf as learnedLevels } from "../palate/index.ts";
import { keptProfile, type observed } from "../profiles/index.ts";
import type { RecipeRow, RecipeVersionRow, WhiskeyRow } from "../rows.ts";
import {
  batchNow,
  batchPasts,
  freeMl,
  NO_PAST,
  nameOf,
  onlyWhiskeyIn,
  type Shelf,
  strengthOf,
  whiskeyLabel,
} from "../shelf/index.ts";
import { triedParts } from "./tried-parts.ts";
import { type SaidOfGlasses, triedRankings } from "./tried-rankings.ts";
import { SCORES } from "./tried-scores.ts";

interface Around {
  readonly shelf: Shelf;
  readonly recipe: RecipeRow;
  readonly body: RecipeVersionRow["body"];
  readonly flights: readonly FlightEvidence[];
  readonly seen: ReturnType<typeof observed>;
  readonly learned: LearnedHere;
  readonly from: "recipe" | "shelf";
}

/** Common practice, no source: five glasses are what a palate takes in an evening, eight parts what one measures by hand. */
const USUAL = { glasses: 5, maxParts: 8, seed: 1 } as const;
/** Less than this of a whiskey pours no glass. */
const LEAST_ML = 10;

/**
 * N1: a household's history around a recipe. What is in a glass comes from revealed flights alone; what a name was made of, from the
 * ledger.
 */
export function triedHistory({ shelf, recipe, body, flights, seen, learned, from }: Around): TriedHistory {
  const notes: string[] = [];
  const target = recipe.targetWhiskeyId === null ? null : `whiskey:${recipe.targetWhiskeyId}`;
  const { by, said: all } = triedRankings(flights, target);
  const left = freeByWhiskey(shelf);
  const own = body.slots.flatMap(({ of, parts }) =>
    of.kind === "whiskey" && parts > 0 ? [of.whiskeyId] : [],
  );
  const told = (row: WhiskeyRow): boolean => Object.keys(levelsOf(row, seen, learned)).length > 0;
  const wider = [...shelf.whiskeys.values()].filter(
    (row) => row.id !== recipe.targetWhiskeyId && told(row) && !own.includes(row.id),
  );
  const wanted = [...new Set([...own, ...(from === "shelf" ? wider.map(({ id }) => id) : [])])];
  const mixes = wanted.filter((id) => (left.get(id) ?? 0) >= LEAST_ML).slice(0, NEXT_LIMITS.items - 1);
  const short = wanted.filter((id) => !mixes.includes(id));
  if (short.length > 0)
    notes.push(`Not on the shelf any more, so in no new glass: ${labels(shelf, short).join(", ")}.`);
  if (mixes.length < 2)
    notes.push("A new mix needs two whiskeys on the shelf: take the whole shelf, or put a bottle on it.");

  const partsOf = madeOf(shelf);
  const items = new Set([...mixes, ...own.slice(0, 12)]);
  const tried = new Map<string, Readonly<Record<string, number>>>();
  const unknown = new Set<string>();
  /** Takes a name in, if it is known what it was and there is room. */
  const take = (name: string): boolean => {
    if (tried.has(name)) return true;
    const parts = partsOf(name);
    if (parts === null) {
      unknown.add(name);
      return false;
    }
    const fresh = Object.keys(parts).filter((id) => !items.has(id));
    if (tried.size >= NEXT_LIMITS.tried || items.size + fresh.length > NEXT_LIMITS.items) return false;
    for (const id of fresh) items.add(id);
    tried.set(name, parts);
    return true;
  };
  const aimed = target !== null && take(target);
  const said = all
    .slice(0, NEXT_LIMITS.rankings)
    .map(
      (one): SaidOfGlasses =>
        "marks" in one
          ? { ...one, marks: one.marks.filter(({ id }) => take(id)) }
          : {
              ...one,
              places: one.places.map((tie) => tie.filter(take)).filter((tie) => tie.length > 0),
            },
    )
    .filter((one) => ("marks" in one ? one.marks : one.places.flat()).length > 1);
  if (all.length > NEXT_LIMITS.rankings)
    notes.push(`The newest ${NEXT_LIMITS.rankings} of ${all.length} sheets are looked at.`);
  const rankings = said.flatMap((one) => ("marks" in one ? [] : [one]));
  const scored = said.flatMap((one) => ("marks" in one ? [one] : []));
  const label = new Map(flights.flatMap((flight) => [...flight.labels]));
  if (unknown.size > 0)
    notes.push(
      `What was in these is not known any more: ${[...unknown].map((name) => label.get(name) ?? name).join(", ")}.`,
    );
  const silent = mixes.filter((id) => !told(shelf.whiskeys.get(id) as WhiskeyRow));
  if (silent.length > 0)
    notes.push(
      `Nobody has said what they taste of, so nothing carries over to them from others: ${labels(shelf, silent).join(", ")}.`,
    );

  if (learned.sheets.length > 0)
    notes.push(
      `What each whiskey tastes of is learned: from labels, the shelf and ${learned.sheets.length} ${learned.sheets.length === 1 ? "note" : "notes"} of revealed flights.`,
    );

  const tasters = new Set(said.map(({ tasterId }) => tasterId)).size;
  const pours = poursFor(tasters);
  // The target is what it is: it stands in the flight as long as it fills the smallest glasses.
  const enough = (name: string): number =>
    name === target ? Math.max(1, tasters) * SMALLEST_POUR_ML : pours.pourMl;
  const ready = readyIn(shelf, partsOf, enough).filter(({ parts }) =>
    Object.keys(parts).every((id) => items.has(id)),
  );
  const standing = eachOnce(ready)
    .map(({ parts }) => parts)
    .slice(0, NEXT_LIMITS.tried);
  const rows = [...items].map((id) => shelf.whiskeys.get(id)).filter((row) => row !== undefined);
  const attributes = [
    ...new Set(rows.flatMap((row) => Object.keys(levelsOf(row, seen, learned)))),
  ].toSorted();
  return {
    asked: {
      items: rows.map((row) => {
        const levels = levelsOf(row, seen, learned);
        return {
          id: row.id,
          abv: abv20OfStrength(strengthOf(row.strength)),
          profile: Object.fromEntries(attributes.map((name) => [name, levels[name] ?? null])),
        };
      }),
      tried: [...tried].map(([id, parts]) => ({ id, parts: { ...parts } })),
      rankings: rankings.map(({ tasterId, places }) => ({
        taster: tasterId,
        order: places.map((tie) => [...tie]),
      })),
      ...(scored.length === 0
        ? {}
        : {
            scores: scored.map(({ tasterId, marks }) => ({
              taster: tasterId,
              of: by,
              scale: [...SCORES] as [number, number],
              marks: byName(marks),
            })),
          }),
      ...USUAL,
      ...(mixes.length > 0 ? { mixes } : {}),
      ready: [...new Set(ready.map(({ id }) => id))].filter((id) => tried.has(id)),
      ...(aimed && target !== null ? { target } : {}),
      shelf: {
        leftMl: Object.fromEntries(rows.map(({ id }) => [id, left.get(id) ?? 0])),
        ...pours,
        stands: standing,
      },
    },
    names: Object.fromEntries([
      ...rows.map((row) => [row.id, whiskeyLabel(row)] as const),
      ...[...tried.keys()].map((name) => [name, nameHere(shelf, name) ?? label.get(name) ?? name] as const),
    ]),
    stock: rows.map((row) => ({
      id: row.id,
      freeMl: left.get(row.id) ?? 0,
      abv20: abv20OfStrength(strengthOf(row.strength)),
    })),
    vessels: ready,
    by,
    counted: {
      flights: new Set(said.map(({ flightId }) => flightId)).size,
      rankings: rankings.length,
      marks: scored.reduce((sum, { marks }) => sum + marks.length, 0),
      tasters,
    },
    notes,
  };
}

/** Scores by name: a number, or several of what was poured more than once. */
const byName = (marks: readonly { readonly id: string; readonly mark: number }[]) =>
  Object.fromEntries(
    [...Map.groupBy(marks, ({ id }) => id)].map(([id, own]) => {
      const numbers = own.map(({ mark }) => mark);
      return [id, numbers.length === 1 ? (numbers[0] as number) : numbers] as const;
    }),
  );

const labels = (shelf: Shelf, ids: readonly string[]): string[] =>
  ids.map((id) => {
    const row = shelf.whiskeys.get(id);
    return row === undefined ? id : whiskeyLabel(row);
  });

/** PA6: learned levels as soon as a revealed flight teaches any; else those noted on the shelf, else those observed in the glass. */
function levelsOf(
  row: WhiskeyRow,
  { liquids }: Around["seen"],
  { sheets, levels }: LearnedHere,
): Record<string, { value: number; sd: number }> {
  const known =
    sheets.length > 0
      ? learnedLevels(levels, row.id)
      : { ...liquids.get(`whiskey:${row.id}`)?.whole, ...keptProfile(row) };
  return Object.fromEntries(
    Object.entries(known).map(([name, { mean, sd }]) => [
      name,
      { value: Math.min(10, Math.max(0, mean)), sd: Math.min(10, sd) },
    ]),
  );
}

/** What a name in the glass was made of; null where that is not known. */
function madeOf(shelf: Shelf): (name: string) => Readonly<Record<string, number>> | null {
  const pasts = batchPasts(shelf);
  return (name) => {
    const [kind = "", id = ""] = name.split(":");
    if (kind === "whiskey") return shelf.whiskeys.has(id) ? { [id]: 1 } : null;
    const batch = kind === "batch" ? shelf.batches.get(id) : undefined;
    const held: Held =
      kind === "vessel"
        ? contentsOfVessel(shelf.state, id)
        : batch === undefined
          ? new Map()
          : ((pasts.get(id) ?? NO_PAST).made ?? batchNow(shelf, batch));
    const parts = triedParts(held);
    return parts !== null && Object.keys(parts).every((whiskey) => shelf.whiskeys.has(whiskey))
      ? parts
      : null;
  };
}

/** What new mixes can be poured of: the bottles that a trial takes it from. */
function freeByWhiskey(shelf: Shelf): ReadonlyMap<string, number> {
  const left = new Map<string, number>();
  for (const vessel of shelf.vessels.values()) {
    const only = vessel.batchId === null ? onlyWhiskeyIn(shelf, vessel.id) : null;
    if (only !== null && isStock(shelf, vessel))
      left.set(only, (left.get(only) ?? 0) + freeMl(shelf, vessel.id));
  }
  return left;
}

/** Vessels that hold enough to pour by the name of what is in them, the fullest first. */
function readyIn(
  shelf: Shelf,
  partsOf: ReturnType<typeof madeOf>,
  enough: (name: string) => number,
): TriedHistory["vessels"] {
  const all = [...shelf.vessels.values()].flatMap(({ id: vesselId, label }) => {
    const ml = freeMl(shelf, vesselId);
    const { nameId } = nameOf(shelf, vesselId);
    const parts = ml < enough(nameId) ? null : partsOf(nameId);
    return parts === null ? [] : [{ id: nameId, vesselId, label, freeMl: ml, parts: { ...parts } }];
  });
  return all.toSorted((a, b) => b.freeMl - a.freeMl);
}

function nameHere(shelf: Shelf, name: string): string | null {
  const [kind, id = ""] = name.split(":");
  if (kind === "whiskey") return labels(shelf, [id])[0] ?? null;
  return kind === "batch" ? (shelf.batches.get(id)?.name ?? null) : (shelf.vessels.get(id)?.label ?? null);
}
