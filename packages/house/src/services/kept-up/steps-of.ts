import { DAY_MS } from "@partsproof/core/quantity";
import {
  applyTransfer,
  type Contents as Held,
  contentsOfVessel,
  emptyState,
  type Holding,
  volumeOf,
} from "@partsproof/core/ledger";
import type { KeptUpStep } from "@partsproof/core/kept-up";
import { coreTransfer, type Shelf } from "../shelf/index.ts";

/** One transfer into the bottle: the steps it is made of, one for each liquid in it. */
export interface Addition {
  readonly transferId: string;
  readonly at: string;
  readonly from: string;
  readonly ml: number;
  /** First and last of its steps. */
  readonly steps: readonly [first: number, last: number];
}

export interface Kept {
  readonly steps: readonly KeptUpStep[];
  readonly additions: readonly Addition[];
  readonly pours: number;
  readonly pouredMl: number;
}

/** U1: the bottle's own story out of the household's ledger, undone transfers left out. Days are counted from its first. */
export function stepsOf(shelf: Shelf, vesselId: string): Kept {
  const steps: KeptUpStep[] = [];
  const additions: Addition[] = [];
  let [pours, pouredMl] = [0, 0];
  let start: number | null = null;
  let state = emptyState(shelf.vessels.values());
  for (const row of shelf.transfers) {
    if (row.undoneAt !== null) continue;
    const moved = applyTransfer(state, coreTransfer(row));
    if (!moved.ok) throw new Error(`ledger of ${shelf.householdId} does not fold: ${moved.refusal.message}`);
    const [before, after] = [state, moved.state].map((one) => contentsOfVessel(one, vesselId));
    state = moved.state;
    const into = row.to.kind === "vessel" && row.to.vesselId === vesselId;
    const out = row.from.kind === "vessel" && row.from.vesselId === vesselId;
    if (before === undefined || after === undefined || into === out) continue;
    start ??= Date.parse(row.at);
    const at = (Date.parse(row.at) - start) / DAY_MS;
    if (out) {
      const ml = volumeOf(before) - volumeOf(after);
      if (!(ml > 0)) continue;
      steps.push({ kind: "pour", at, ml });
      pours += 1;
      pouredMl += ml;
      continue;
    }
    const added = gained(before, after).map(
      ([liquidId, masses]): KeptUpStep => ({ kind: "add", at, liquidId, ...masses }),
    );
    if (added.length === 0) continue;
    const first = steps.length;
    steps.push(...added);
    additions.push({
      transferId: row.id,
      at: row.at,
      from:
        row.from.kind === "vessel"
          ? (shelf.vessels.get(row.from.vesselId)?.label ?? "")
          : row.from.name === "tap"
            ? "water"
            : `the ${row.from.name}`,
      ml: volumeOf(after) - volumeOf(before),
      steps: [first, steps.length - 1],
    });
  }
  return { steps, additions, pours, pouredMl };
}

const ethanolG = (one: Holding | undefined): number =>
  (one?.pricedEthanolG ?? 0) + (one?.unpricedEthanolG ?? 0);
const waterG = (one: Holding | undefined): number => (one?.pricedWaterG ?? 0) + (one?.unpricedWaterG ?? 0);

/** Masses that came in, liquid by liquid. */
function gained(
  before: Held,
  after: Held,
): (readonly [string, { readonly ethanolG: number; readonly waterG: number }])[] {
  return [...after].flatMap(([liquidId, holding]) => {
    const old = before.get(liquidId);
    const masses = {
      ethanolG: Math.max(0, ethanolG(holding) - ethanolG(old)),
      waterG: Math.max(0, waterG(holding) - waterG(old)),
    };
    return masses.ethanolG + masses.waterG > 1e-9 ? [[liquidId, masses] as const] : [];
  });
}
