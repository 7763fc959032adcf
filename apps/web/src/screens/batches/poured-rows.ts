import { parseAmount } from "@partsproof/core/quantity";
import type { BatchPlan, Issue, Pour, Vessel } from "@partsproof/house/protocol";

/** One pour on its way into the batch. */
export interface PouredRow {
  readonly id: string;
  readonly label: string;
  readonly from: Pour["from"];
  /** As planned; null for a pour that was not in the plan. */
  readonly planned: { readonly ml: number; readonly g: number } | null;
  /** What was typed instead; null while the plan stands. */
  readonly typed: string | null;
}

/** The pours of a plan in order, water last. */
export function rowsOf(plan: BatchPlan): PouredRow[] {
  const rows = plan.steps.flatMap((step, s) =>
    step.pours.map(
      (pour, p): PouredRow => ({
        id: `${s}.${p}`,
        label: pour.label,
        from: pour.from,
        planned: { ml: pour.ml, g: pour.g },
        typed: null,
      }),
    ),
  );
  const isWater = ({ from }: PouredRow): boolean => from.kind === "water";
  return [...rows.filter((row) => !isWater(row)), ...rows.filter(isWater)];
}

/**
 * The rows of a plan with what a scale said instead, in grams. A row of the plan that was not poured is left empty; what was poured
 * beside the plan has a row of its own.
 */
export function rowsAsWeighed(
  rows: readonly PouredRow[],
  weighed: readonly { readonly from: Pour["from"]; readonly label: string; readonly massG: number }[],
): PouredRow[] {
  const same = (a: Pour["from"], b: Pour["from"]): boolean =>
    a.kind === "vessel" ? b.kind === "vessel" && a.vesselId === b.vesselId : b.kind === "water";
  const left = [...weighed];
  const planned = rows.map((row) => {
    const at = left.findIndex(({ from }) => same(row.from, from));
    const [one] = at === -1 ? [] : left.splice(at, 1);
    return { ...row, typed: one === undefined ? "" : one.massG.toFixed(2) };
  });
  const more = left.map(
    ({ from, label, massG }, i): PouredRow => ({
      id: `weighed ${i}`,
      label,
      from,
      planned: null,
      typed: massG.toFixed(2),
    }),
  );
  return [...planned, ...more];
}

/** Grams in a millilitre of what a vessel holds; water where it holds nothing. */
export function gramsPerMl(row: PouredRow, vessels: ReadonlyMap<string, Vessel>): number {
  if (row.planned !== null && row.planned.ml > 0) return row.planned.g / row.planned.ml;
  const vessel = row.from.kind === "vessel" ? vessels.get(row.from.vesselId) : undefined;
  if (vessel === undefined || !(vessel.contents.volumeMl > 0)) return 0.9982;
  return vessel.contents.massG / vessel.contents.volumeMl;
}

/**
 * What to send: the plan's own numbers, unrounded, where nothing was typed; else the amount as typed, a bare number in
 * `unit`. A row left empty or at 0 was not poured.
 */
export function readRows(
  rows: readonly PouredRow[],
  unit: "mL" | "g",
): { readonly ok: true; readonly pours: Pour[] } | { readonly ok: false; readonly issues: Issue[] } {
  const issues: Issue[] = [];
  const pours: Pour[] = [];
  for (const [i, row] of rows.entries()) {
    if (row.typed === null) {
      if (row.planned !== null && row.planned.ml > 0) {
        pours.push({ from: row.from, amount: { kind: "volume", ml: row.planned.ml } });
      }
      continue;
    }
    const typed = row.typed.trim();
    if (typed === "") continue;
    const read = parseAmount(/[a-z]/i.test(typed) ? typed : `${typed} ${unit}`);
    if (!read.ok) {
      issues.push({ ...read.issue, path: ["rows", i, "amount"] });
    } else if (read.value.kind === "mass" ? read.value.massG > 0 : read.value.volumeMl > 0) {
      pours.push({
        from: row.from,
        amount:
          read.value.kind === "mass"
            ? { kind: "mass", g: read.value.massG }
            : { kind: "volume", ml: read.value.volumeMl },
      });
    }
  }
  return issues.length > 0 ? { ok: false, issues } : { ok: true, pours };
}

/** Which row a pour that was sent came from: rows not poured were not sent. */
export function rowOfPour(rows: readonly PouredRow[], unit: "mL" | "g", pour: number): number {
  let sent = -1;
  for (const [i, row] of rows.entries()) {
    const alone = readRows([row], unit);
    if (alone.ok && alone.pours.length > 0) sent++;
    if (sent === pour) return i;
  }
  return pour;
}
