import { isSource } from "./account.ts";
import { WATER } from "./liquid.ts";
import { type Refused, refuse } from "./refusal.ts";
import type { Transfer } from "./transfer.ts";

type Figure = { what: string; value: number; unit?: "mL" | "g"; mayBeZero: boolean };

function figuresOf({ amount }: Transfer): Figure[] {
  if (amount.kind === "volume")
    return [{ what: "poured volume", value: amount.ml, unit: "mL", mayBeZero: false }];
  if (amount.kind === "mass") return [{ what: "poured mass", value: amount.g, unit: "g", mayBeZero: false }];
  if (amount.kind === "all") return [];
  return [
    { what: "mass of ethanol", value: amount.ethanolG, unit: "g", mayBeZero: true },
    { what: "mass of water", value: amount.waterG, unit: "g", mayBeZero: true },
    { what: "mass of liquid", value: amount.ethanolG + amount.waterG, unit: "g", mayBeZero: false },
    { what: "cost", value: amount.cost ?? 0, mayBeZero: true },
  ];
}

/** Refuses an amount of the wrong kind for where it comes from, or one that is no amount; else null. */
export function checkAmount(transfer: Transfer): Refused | null {
  const { amount, from } = transfer;
  const at = { transferId: transfer.id, ...(from.kind === "vessel" ? { vesselId: from.vesselId } : {}) };
  if (isSource(from) !== (amount.kind === "liquid")) {
    const limit = isSource(from) ? "liquid" : "volume, mass or all";
    const what = isSource(from) ? "amount from a source" : "amount from a vessel";
    return refuse("amount_kind", at, { what, requires: limit, limit, received: amount.kind });
  }
  for (const { what, value, unit, mayBeZero } of figuresOf(transfer)) {
    const bound = { what, received: value, ...(unit === undefined ? {} : { unit }) };
    if (!Number.isFinite(value))
      return refuse("amount_not_finite", at, { ...bound, requires: "a finite number" });
    if (value < 0 || (value === 0 && !mayBeZero))
      return refuse("amount_not_positive", at, {
        ...bound,
        requires: mayBeZero ? "0 or more" : "more than 0",
        limit: 0,
      });
  }
  if (amount.kind === "liquid" && amount.liquidId === WATER && amount.ethanolG > 0)
    return refuse("water_with_alcohol", at, {
      what: "mass of ethanol in water",
      requires: "0",
      limit: 0,
      received: amount.ethanolG,
      unit: "g",
    });
  return null;
}
