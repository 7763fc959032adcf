import { describe, expect, it } from "vitest";
import {
  type Account,
  type Amount,
  applyTransfer,
  emptyState,
  type LedgerState,
  type Refusal,
  type Transfer,
  WATER,
} from "./index.ts";

const shop: Account = { kind: "outside", name: "shop" };
const tap: Account = { kind: "outside", name: "tap" };
const glass: Account = { kind: "outside", name: "glass" };
const bottle: Account = { kind: "vessel", vesselId: "bottle" };
const jar: Account = { kind: "vessel", vesselId: "jar" };
// 40 % by mass: 935.15 kg/m³ at 20 °C (OIML R 22 Table I, page 24), so 500 g is 534.67 mL.
const rye: Amount = { kind: "liquid", liquidId: "harbour-rye", ethanolG: 200, waterG: 300, cost: 3000 };

const transfer = (seq: number, from: Account, to: Account, amount: Amount): Transfer => ({
  id: `t${seq}`,
  seq,
  at: "2026-01-05T19:00:00Z",
  from,
  to,
  amount,
});

function accepted(transfers: Transfer[]): LedgerState {
  const start = emptyState([
    { id: "bottle", capacityMl: 700 },
    { id: "jar", capacityMl: 100 },
  ]);
  return transfers.reduce((state, next) => {
    const result = applyTransfer(state, next);
    if (!result.ok) throw new Error(result.refusal.message);
    return result.state;
  }, start);
}

function refusal(next: Transfer, before: Transfer[] = [transfer(1, shop, bottle, rye)]): Refusal {
  const result = applyTransfer(accepted(before), next);
  if (result.ok) throw new Error(`${next.id} was accepted`);
  return result.refusal;
}

describe("refusals name the bound that failed", () => {
  it("R1 pouring 600 mL out of 534.67 mL", () => {
    const got = refusal(transfer(2, bottle, glass, { kind: "volume", ml: 600 }));
    expect(got).toMatchObject({
      code: "vessel_short",
      transferId: "t2",
      vesselId: "bottle",
      received: 600,
      unit: "mL",
    });
    expect(got.limit).toBeCloseTo(500 / 0.93515, 1);
    expect(got.message).toMatch(/^pouring out requires at most the 534\.6\d+ mL in the vessel, got 600 mL$/);
  });

  it("R1 pouring 501 g out of 500 g", () => {
    expect(refusal(transfer(2, bottle, glass, { kind: "mass", g: 501 }))).toMatchObject({
      code: "vessel_short",
      limit: 500,
      received: 501,
      unit: "g",
    });
  });

  it("R2 filling 120 mL into a jar of 100 mL", () => {
    const got = refusal(transfer(2, bottle, jar, { kind: "volume", ml: 120 }));
    expect(got).toMatchObject({
      code: "vessel_overflow",
      transferId: "t2",
      vesselId: "jar",
      limit: 100,
      unit: "mL",
    });
    expect(got.received).toBeCloseTo(120, 9);
  });

  it("R2 the second half of an overflow is the one refused", () => {
    const first = [transfer(1, shop, bottle, rye), transfer(2, bottle, jar, { kind: "volume", ml: 60 })];
    const got = refusal(transfer(3, bottle, jar, { kind: "volume", ml: 41 }), first);
    expect(got).toMatchObject({ code: "vessel_overflow", limit: 100 });
    expect(got.received).toBeCloseTo(101, 9);
  });

  it("R3 a vessel the ledger does not have", () => {
    const cask: Account = { kind: "vessel", vesselId: "cask" };
    const got = refusal(transfer(2, bottle, cask, { kind: "all" }));
    expect(got).toMatchObject({ code: "vessel_unknown", vesselId: "cask", received: "cask" });
    expect(got.message).toBe("transfer requires a vessel of this ledger, got cask");
  });

  it("R4 pouring out of an empty vessel, whatever the amount", () => {
    for (const amount of [{ kind: "all" }, { kind: "mass", g: 1 }, { kind: "volume", ml: 1 }] as const)
      expect(refusal(transfer(2, jar, bottle, amount))).toMatchObject({
        code: "vessel_empty",
        vesselId: "jar",
        limit: 0,
      });
  });

  it("R5 a transfer to itself", () => {
    expect(refusal(transfer(2, bottle, bottle, { kind: "all" }))).toMatchObject({
      code: "account_same",
      vesselId: "bottle",
    });
    expect(refusal(transfer(2, glass, glass, { kind: "all" })).code).toBe("account_same");
  });

  it("R6 out of a sink, and into a source", () => {
    expect(refusal(transfer(2, glass, bottle, { kind: "all" }))).toMatchObject({
      code: "account_direction",
      received: "glass",
    });
    expect(refusal(transfer(2, bottle, shop, { kind: "all" }))).toMatchObject({
      code: "account_direction",
      received: "shop",
    });
  });

  it("R7 a named liquid out of a vessel, and all of a source", () => {
    expect(refusal(transfer(2, bottle, jar, rye))).toMatchObject({
      code: "amount_kind",
      vesselId: "bottle",
      received: "liquid",
    });
    expect(refusal(transfer(2, shop, jar, { kind: "all" }))).toMatchObject({
      code: "amount_kind",
      received: "all",
    });
  });

  it("R8 amounts that are none", () => {
    for (const ml of [0, -0, -5])
      expect(refusal(transfer(2, bottle, jar, { kind: "volume", ml }))).toMatchObject({
        code: "amount_not_positive",
        limit: 0,
        received: ml,
        unit: "mL",
      });
    for (const g of [Number.NaN, Infinity, -Infinity])
      expect(refusal(transfer(2, bottle, jar, { kind: "mass", g }))).toMatchObject({
        code: "amount_not_finite",
        received: g,
        unit: "g",
      });
    expect(refusal(transfer(2, shop, jar, { ...rye, ethanolG: -1 })).message).toBe(
      "mass of ethanol requires 0 or more, got -1 g",
    );
    expect(refusal(transfer(2, shop, jar, { ...rye, ethanolG: 0, waterG: 0 })).message).toBe(
      "mass of liquid requires more than 0, got 0 g",
    );
    expect(refusal(transfer(2, shop, jar, { ...rye, cost: -1 })).message).toBe(
      "cost requires 0 or more, got -1",
    );
    expect(refusal(transfer(2, shop, jar, { ...rye, cost: Number.NaN })).code).toBe("amount_not_finite");
  });

  it("R9 water with alcohol in it", () => {
    const wet: Amount = { kind: "liquid", liquidId: WATER, ethanolG: 1, waterG: 9, cost: 0 };
    expect(refusal(transfer(2, tap, jar, wet))).toMatchObject({
      code: "water_with_alcohol",
      limit: 0,
      received: 1,
    });
  });

  it("R10 a seq that is not after the last, and times that cannot be read", () => {
    expect(refusal(transfer(1, bottle, jar, { kind: "mass", g: 1 }))).toMatchObject({
      code: "seq_not_after",
      limit: 1,
      received: 1,
    });
    expect(refusal(transfer(1.5, bottle, jar, { kind: "mass", g: 1 })).code).toBe("seq_not_after");
    for (const at of ["yesterday", "2026-01-05T19:00:00", "2026-13-05", ""])
      expect(refusal({ ...transfer(2, bottle, jar, { kind: "mass", g: 1 }), at })).toMatchObject({
        code: "at_unreadable",
        received: at,
      });
  });

  it("a ledger with two vessels of one id, or a capacity that is none, is a caller's bug", () => {
    const vessel = { id: "bottle", capacityMl: 700 };
    expect(() => emptyState([vessel, vessel])).toThrow(RangeError);
    for (const capacityMl of [0, -1, Number.NaN, Infinity])
      expect(() => emptyState([{ id: "bottle", capacityMl }])).toThrow(RangeError);
  });
});
