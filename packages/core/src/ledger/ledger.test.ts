import { describe, expect, it } from "vitest";
import {
  type Account,
  type Amount,
  applyTransfer,
  contentsOf,
  contentsOfVessel,
  emptyState,
  foldLedger,
  type LedgerState,
  massesOf,
  stateAt,
  type Transfer,
  trialBalance,
  undoTransfer,
  volumeOf,
  WATER,
} from "./index.ts";

const shop: Account = { kind: "outside", name: "shop" };
const tap: Account = { kind: "outside", name: "tap" };
const glass: Account = { kind: "outside", name: "glass" };
const vessel = (vesselId: string): Account => ({ kind: "vessel", vesselId });
const vessels = ["rye", "malt", "blend", "second"].map((id) => ({ id, capacityMl: 1000 }));
const liquid = (liquidId: string, ethanolG: number, waterG: number, cost: number | null): Amount => ({
  kind: "liquid",
  liquidId,
  ethanolG,
  waterG,
  cost,
});

let seq = 0;
const transfer = (from: Account, to: Account, amount: Amount): Transfer => {
  seq += 1;
  return { id: `t${seq}`, seq, at: `2026-01-${String(seq).padStart(2, "0")}`, from, to, amount };
};

/** Invented evening: 400 g of rye at 3000, 200 g of malt of unknown price, two blends and a dram. */
function evening(): Transfer[] {
  seq = 0;
  return [
    transfer(shop, vessel("rye"), liquid("harbour-rye", 200, 200, 3000)), // t1
    transfer(shop, vessel("malt"), liquid("tidewall-malt", 80, 120, null)), // t2
    transfer(vessel("rye"), vessel("blend"), { kind: "mass", g: 200 }), // t3: 100 + 100, cost 1500
    transfer(vessel("malt"), vessel("blend"), { kind: "mass", g: 100 }), // t4: 40 + 60, unpriced
    transfer(tap, vessel("blend"), liquid(WATER, 0, 20, 0)), // t5: blend is 320 g
    transfer(vessel("blend"), vessel("second"), { kind: "mass", g: 160 }), // t6: half of everything
    transfer(vessel("malt"), vessel("second"), { kind: "all" }), // t7: 40 + 60 more
    transfer(vessel("second"), glass, { kind: "mass", g: 65 }), // t8: a quarter of 260 g
  ];
}

function folded(transfers: readonly Transfer[], until?: string): LedgerState {
  const result = foldLedger(vessels, transfers, until);
  if (!result.ok) throw new Error(result.refusal.message);
  return result.state;
}

const holding = (state: LedgerState, id: string): object => Object.fromEntries(contentsOfVessel(state, id));

describe("the fold", () => {
  it("A2 takes from every liquid in proportion, cost along with it (worked by hand)", () => {
    const state = folded(evening());
    expect(holding(state, "rye")).toEqual({
      "harbour-rye": {
        pricedEthanolG: 100,
        pricedWaterG: 100,
        cost: 1500,
        unpricedEthanolG: 0,
        unpricedWaterG: 0,
      },
    });
    // second = (half of blend + 100 g of malt) * 3/4
    expect(holding(state, "second")).toEqual({
      "harbour-rye": {
        pricedEthanolG: 37.5,
        pricedWaterG: 37.5,
        cost: 562.5,
        unpricedEthanolG: 0,
        unpricedWaterG: 0,
      },
      "tidewall-malt": {
        pricedEthanolG: 0,
        pricedWaterG: 0,
        cost: 0,
        unpricedEthanolG: 45,
        unpricedWaterG: 67.5,
      },
      water: { pricedEthanolG: 0, pricedWaterG: 7.5, cost: 0, unpricedEthanolG: 0, unpricedWaterG: 0 },
    });
  });

  it("L1 sources run into debt by what they gave, and the trial balance is zero", () => {
    const state = folded(evening());
    expect(contentsOf(state, shop).get("harbour-rye")).toMatchObject({ pricedEthanolG: -200, cost: -3000 });
    expect(contentsOf(state, glass).get("harbour-rye")).toMatchObject({ pricedEthanolG: 12.5, cost: 187.5 });
    const { lines, largestRelative } = trialBalance(state);
    expect(lines).toHaveLength(15);
    expect(largestRelative).toBe(0);
  });

  it("L1 the trial balance sees a gram that nobody gave, and one that was lost", () => {
    const state = folded(evening());
    for (const contents of [new Map(), contentsOfVessel(folded(evening().slice(0, 1)), "rye")]) {
      const forged = { ...state, accounts: new Map(state.accounts).set("vessel:second", contents) };
      expect(trialBalance(forged).largestRelative).toBeGreaterThan(0.05);
    }
    const accounts = new Map(state.accounts).set("vessel:second", new Map([["stray", NOTHING_BUT_A_GRAM]]));
    expect(trialBalance({ ...state, accounts }).largestRelative).toBe(Infinity);
  });

  it("A1 all, and a volume or mass within 1e-6 of all, leave exactly nothing", () => {
    const full = folded(evening().slice(0, 1));
    const ml = volumeOf(contentsOfVessel(full, "rye"));
    const amounts: Amount[] = [
      { kind: "all" },
      { kind: "volume", ml: ml * (1 - 9e-7) },
      { kind: "volume", ml: ml * (1 + 9e-7) },
      { kind: "mass", g: 400.0003 },
    ];
    for (const amount of amounts) {
      const result = applyTransfer(full, { ...transfer(vessel("rye"), glass, amount), seq: 2 });
      expect(result.ok && contentsOfVessel(result.state, "rye").size).toBe(0);
      expect(result.ok && massesOf(contentsOf(result.state, glass)).ethanolG).toBe(200);
    }
    const less: Amount = { kind: "volume", ml: ml * (1 - 2e-6) };
    const result = applyTransfer(full, { ...transfer(vessel("rye"), glass, less), seq: 2 });
    expect(result.ok && massesOf(contentsOfVessel(result.state, "rye")).ethanolG).toBeCloseTo(200 * 2e-6, 12);
  });

  it("A3 what shrinks on mixing fits: 50 mL of ethanol and 50 mL of water in a flask of 97 mL", () => {
    // At 0.78924 and 0.99820 g/mL that is 39.462 g and 49.910 g. 96.46 mL is what the OIML R 22 formula gives; US Gauging
    // Manual Table 6 agrees on the size of it (50 parts and 53.73 parts of water make 100 at 60 °F, not 103.73).
    const flask = [{ id: "flask", capacityMl: 97 }];
    const parts = [
      transfer(shop, vessel("flask"), liquid("pure", 39.462, 0, null)),
      transfer(tap, vessel("flask"), liquid(WATER, 0, 49.91, 0)),
    ];
    const result = foldLedger(flask, parts);
    expect(result.ok && volumeOf(contentsOfVessel(result.state, "flask"))).toBeCloseTo(96.46, 2);
    expect(foldLedger([{ id: "flask", capacityMl: 96.4 }], parts)).toMatchObject({
      ok: false,
      refusal: { code: "vessel_overflow", transferId: parts[1]?.id, limit: 96.4 },
    });
  });

  it("L10 the state at a moment counts what is dated at or before it, offsets included", () => {
    const all = evening();
    expect(folded(all, "2026-01-03")).toEqual(folded(all.slice(0, 3)));
    expect(folded(all, "2026-01-02T23:59:59Z")).toEqual(folded(all.slice(0, 2)));
    expect(folded(all, "2026-01-03T01:00:00+01:00")).toEqual(folded(all.slice(0, 3)));
    expect(stateAt(vessels, all, "2025-12-31")).toEqual({ ok: true, state: emptyState(vessels) });
    expect(() => stateAt(vessels, all, "2026-01-03T01:00:00")).toThrow(/^until requires/);
  });

  it("L10 a pour dated before its filling is refused at a moment between the two", () => {
    const [fill, , pour] = evening() as [Transfer, Transfer, Transfer];
    const late = [{ ...fill, at: "2026-01-09" }, pour];
    expect(foldLedger(vessels, late).ok).toBe(true);
    expect(foldLedger(vessels, late, "2026-01-05")).toMatchObject({
      ok: false,
      refusal: { code: "vessel_empty", transferId: "t3" },
    });
  });

  it("structural sharing: accounts a transfer leaves alone are the same objects", () => {
    const all = evening();
    const before = folded(all.slice(0, 7));
    const result = applyTransfer(before, all[7] as Transfer);
    if (!result.ok) throw new Error(result.refusal.message);
    expect(contentsOfVessel(result.state, "blend")).toBe(contentsOfVessel(before, "blend"));
    expect(result.state.vessels).toBe(before.vessels);
  });
});

describe("undo", () => {
  it("L4 without the water the blend is as it never was; the line stays, marked", () => {
    const all = evening();
    const undone = undoTransfer(vessels, all, "t5");
    if (!undone.ok) throw new Error(undone.refusal.message);
    expect(undone.state).toEqual(folded(all.filter(({ id }) => id !== "t5")));
    expect(undone.transfers.map((line) => line.undone)).toEqual([
      undefined,
      undefined,
      undefined,
      undefined,
      true,
      undefined,
      undefined,
      undefined,
    ]);
    expect(all[4]?.undone).toBeUndefined();
  });

  it("L4 an undone transfer counts for nothing when applied alone, and does not use up its seq", () => {
    const [fill] = evening() as [Transfer];
    const empty = emptyState(vessels);
    expect(applyTransfer(empty, { ...fill, undone: true })).toEqual({ ok: true, state: empty });
  });

  it("R11 is refused when later pours could not have happened, and names each of them", () => {
    const undone = undoTransfer(vessels, evening(), "t2");
    expect(undone).toMatchObject({
      ok: false,
      refusal: { code: "vessel_empty", transferId: "t4", vesselId: "malt" },
      broken: [{ transferId: "t4" }, { transferId: "t7", code: "vessel_empty" }],
    });
  });

  it("R11 an unknown transfer and one undone before", () => {
    const all = evening();
    expect(undoTransfer(vessels, all, "t99")).toMatchObject({ refusal: { code: "transfer_unknown" } });
    const once = undoTransfer(vessels, all, "t8");
    expect(once.ok && undoTransfer(vessels, once.transfers, "t8")).toMatchObject({
      refusal: { code: "transfer_undone", transferId: "t8" },
    });
  });
});

const NOTHING_BUT_A_GRAM = {
  pricedEthanolG: 1,
  pricedWaterG: 0,
  cost: 0,
  unpricedEthanolG: 0,
  unpricedWaterG: 0,
};
