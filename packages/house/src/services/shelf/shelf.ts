import { abv20OfStrength, liquidOfVolume, massFractionOfStrength } from "@partsproof/core/alcoholometry";
import {
  foldLedger,
  type LedgerState,
  type LiquidFacts,
  type Transfer as CoreTransfer,
  WATER,
} from "@partsproof/core/ledger";
import { abv20, millilitres20, proof60F, type Strength } from "@partsproof/core/quantity";
import type { StatedStrength } from "../../protocol/index.ts";
import type { Records } from "../ports.ts";
import type { BatchRow, FlightRow, TransferRow, VesselRow, WhiskeyRow } from "../rows.ts";

/** The household's shelf at this moment of the transaction: rows, and the ledger folded over them. */
export interface Shelf {
  readonly householdId: string;
  readonly vessels: ReadonlyMap<string, VesselRow>;
  readonly whiskeys: ReadonlyMap<string, WhiskeyRow>;
  readonly batches: ReadonlyMap<string, BatchRow>;
  /** All of them, undone ones too, in order of `seq`. */
  readonly transfers: readonly TransferRow[];
  /** Flights whose holds keep liquid back: not revealed and not called off. */
  readonly sealedFlights: readonly FlightRow[];
  /** Vials of bench trials: there to be tasted, and no stock. */
  readonly trialVials: ReadonlySet<string>;
  readonly state: LedgerState;
  readonly facts: ReadonlyMap<string, LiquidFacts>;
}

/** Reads the shelf and folds the ledger (S4). */
export async function shelfState(records: Records, householdId: string): Promise<Shelf> {
  const vessels = await records.list("vessel", householdId);
  const whiskeys = await records.list("whiskey", householdId);
  const batches = await records.list("batch", householdId);
  const unordered = await records.list("transfer", householdId);
  const sealedFlights = [
    ...(await records.list("flight", householdId, { where: { state: "pouring" } })),
    ...(await records.list("flight", householdId, { where: { state: "tasting" } })),
  ];
  const trials = await records.list("trialSet", householdId);
  const transfers = unordered.toSorted((a, b) => a.seq - b.seq);
  const folded = foldLedger(vessels, transfers.map(coreTransfer));
  if (!folded.ok) throw new Error(`ledger of ${householdId} does not fold: ${folded.refusal.message}`);
  return {
    householdId,
    vessels: byId(vessels),
    whiskeys: byId(whiskeys),
    batches: byId(batches),
    transfers,
    sealedFlights,
    trialVials: new Set(trials.flatMap(({ made }) => made.map(({ vesselId }) => vesselId))),
    state: folded.state,
    facts: new Map(whiskeys.map((w) => [w.id, factsOf(w)])),
  };
}

/** A stored row as the ledger of core reads it. */
export function coreTransfer(row: TransferRow): CoreTransfer {
  const { id, seq, at, from, to, liquid } = row;
  const amount: CoreTransfer["amount"] = liquid === null ? row.amount : { kind: "liquid", ...liquid };
  return { id, seq, at, from, to, amount, undone: row.undoneAt !== null };
}

/** Grain bills are stored in per cent and may miss 100 by a rounding; here they add up to 1. */
function factsOf({ ageYears, grains, casks }: WhiskeyRow): LiquidFacts {
  const sum = (grains ?? []).reduce((all, { percent }) => all + percent, 0);
  return {
    ageYears,
    grains: sum > 0 ? (grains ?? []).map(({ grain, percent }) => ({ grain, share: percent / sum })) : null,
    casks,
  };
}

export function strengthOf(stated: StatedStrength): Strength {
  return stated.basis === "abv20"
    ? { basis: "abv20", value: abv20(stated.value) }
    : { basis: "proof60F", value: proof60F(stated.value) };
}

/**
 * The masses of whiskey (or of tap water for null) that come in from outside, fixed at this moment (S7).
 * `cost` in minor units; null where no price is known.
 */
export function liquidIn(
  whiskey: WhiskeyRow | null,
  amount: { readonly kind: "volume"; readonly ml: number } | { readonly kind: "mass"; readonly g: number },
  cost: number | null,
): NonNullable<TransferRow["liquid"]> {
  if (whiskey === null) {
    const waterG =
      amount.kind === "mass" ? amount.g : liquidOfVolume(millilitres20(amount.ml), abv20(0)).waterG;
    return { liquidId: WATER, ethanolG: 0, waterG, cost: 0 };
  }
  const strength = strengthOf(whiskey.strength);
  if (amount.kind === "volume") {
    const masses = liquidOfVolume(millilitres20(amount.ml), abv20OfStrength(strength));
    return { liquidId: whiskey.id, ethanolG: masses.ethanolG, waterG: masses.waterG, cost };
  }
  const ethanolG = amount.g * massFractionOfStrength(strength);
  return { liquidId: whiskey.id, ethanolG, waterG: amount.g - ethanolG, cost };
}

function byId<R extends { readonly id: string }>(rows: readonly R[]): ReadonlyMap<string, R> {
  return new Map(rows.map((row) => [row.id, row]));
}
