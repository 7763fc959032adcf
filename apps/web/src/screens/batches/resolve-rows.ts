import { resolvePours } from "@partsproof/core/alcoholometry";
import { abv20, millilitres20 } from "@partsproof/core/quantity";
import type { BatchPlan, Vessel } from "@partsproof/house/protocol";
import { gramsPerMl, type PouredRow, readRows } from "./poured-rows.ts";

export interface Resolved {
  readonly rows: readonly PouredRow[];
  /** Whether the parts, and the strength, come out as the recipe has them. */
  readonly ratioKept: boolean;
  readonly strengthKept: boolean;
}

/** Of a part, more than this share of it too much has gone too far. */
const TOO_FAR = 0.001;
/** Less than a drop. */
const SAME_ML = 0.02;

/**
 * The rest of a batch reckoned again after a pour went too far: what is poured stays, everything that is not poured yet grows until the
 * parts are right again, water with it, so far as the vessel allows. Null where nothing went too far, or nothing is left to pour.
 */
export function resolveRows(
  plan: BatchPlan,
  rows: readonly PouredRow[],
  unit: "mL" | "g",
  vessels: ReadonlyMap<string, Vessel>,
  capacityMl: number | null,
): Resolved | null {
  const ml = rows.map((row) => {
    if (row.typed === null) return row.planned?.ml ?? 0;
    const read = readRows([row], unit);
    const amount = read.ok ? read.pours[0]?.amount : undefined;
    if (amount === undefined) return 0;
    return amount.kind === "volume" ? amount.ml : amount.g / gramsPerMl(row, vessels);
  });
  const open = (i: number): boolean => rows[i]?.typed === null;
  const at = (i: number): number => ml[i] ?? 0;
  const poured = (own: readonly number[]): number => sum(own, (i) => (open(i) ? 0 : at(i)));
  const slots = plan.steps.flatMap((step, s) => (step.slot === null ? [] : [{ step, own: ownOf(rows, s) }]));
  const over = slots.some(({ step, own }) => poured(own) > step.ml * (1 + TOO_FAR));
  const water = rows.findIndex(({ from, planned }) => from.kind === "water" && planned !== null);
  if (!over || !rows.some((_, i) => open(i))) return null;
  const wanted = plan.result.abv20;
  const solved = resolvePours({
    parts: slots.map(({ step, own }) => ({
      parts: step.ml,
      abv20: abv20(strengthOf(rows[own[0] ?? 0], vessels)),
      pouredMl: millilitres20(poured(own)),
      // What is typed of every bottle of a part is done with.
      fixed: own.every((i) => !open(i)),
    })),
    plannedMl: millilitres20(slots.reduce((all, { step }) => all + step.ml, 0)),
    ...(capacityMl === null ? {} : { capacityMl: millilitres20(capacityMl) }),
    ...(open(water) && wanted !== null ? { to: abv20(wanted) } : {}),
  });
  const found = solved.ok ? solved : solved.nearest;
  if (found === null) return null;
  const changed = new Map<number, number>(open(water) ? [[water, found.reducingMl]] : []);
  for (const [n, { own }] of slots.entries()) {
    const left = own.filter(open);
    const before = sum(left, at);
    for (const i of left) changed.set(i, (found.addMl[n] ?? 0) * (before > 0 ? at(i) / before : 1));
  }
  const next = rows.map((row, i) => {
    const now = changed.get(i);
    return now === undefined ? row : planned(row, now, vessels);
  });
  // Reckoned already.
  if ([...changed].every(([i, now]) => Math.abs(now - at(i)) < SAME_ML)) return null;
  return { rows: next, ratioKept: found.ratioKept, strengthKept: found.strengthKept };
}

/** Rows of a step: their ids begin with its number. */
const ownOf = (rows: readonly PouredRow[], step: number): number[] =>
  rows.flatMap(({ id }, i) => (id.startsWith(`${step}.`) ? [i] : []));

const sum = (at: readonly number[], of: (i: number) => number): number =>
  at.reduce((all, i) => all + of(i), 0);

const planned = (row: PouredRow, ml: number, vessels: ReadonlyMap<string, Vessel>): PouredRow => ({
  ...row,
  planned: { ml, g: ml * gramsPerMl(row, vessels) },
});

const strengthOf = (row: PouredRow | undefined, vessels: ReadonlyMap<string, Vessel>): number =>
  (row?.from.kind === "vessel" ? vessels.get(row.from.vesselId)?.contents.abv20 : 0) ?? 0;
