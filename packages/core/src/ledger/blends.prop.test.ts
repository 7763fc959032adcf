import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { liquidOfVolume } from "../alcoholometry/index.ts";
import { abv20, millilitres20 } from "../quantity/index.ts";
import {
  type Account,
  applyTransfer,
  contentsOfVessel,
  describeContents,
  emptyState,
  foldLedger,
  type LiquidFacts,
  type Transfer,
  trialBalance,
  volumeOf,
} from "./index.ts";

const vessel = (vesselId: string): Account => ({ kind: "vessel", vesselId });
const shop: Account = { kind: "outside", name: "shop" };
const transferAt = (seq: number, parts: Pick<Transfer, "from" | "to" | "amount">): Transfer => ({
  id: `t${seq}`,
  seq,
  at: "2026-01-05",
  ...parts,
});
const glass: Account = { kind: "outside", name: "glass" };

/** An exact fraction of whole numbers: the oracle has no rounding at all. */
type Fraction = { top: bigint; bottom: bigint };
const times = (a: Fraction, top: bigint, bottom: bigint): Fraction => reduce(a.top * top, a.bottom * bottom);
const plus = (a: Fraction, b: Fraction): Fraction =>
  reduce(a.top * b.bottom + b.top * a.bottom, a.bottom * b.bottom);
const minus = (a: Fraction, b: Fraction): Fraction => plus(a, { top: -b.top, bottom: b.bottom });
const ZERO: Fraction = { top: 0n, bottom: 1n };
function reduce(top: bigint, bottom: bigint): Fraction {
  let [a, b] = [top < 0n ? -top : top, bottom];
  while (b > 0n) [a, b] = [b, a % b];
  return a === 0n ? { top: 0n, bottom: 1n } : { top: top / a, bottom: bottom / a };
}
/** To 1e-18 absolute, of figures of 1e-3 to 1e3 g. */
const toNumber = ({ top, bottom }: Fraction): number => Number((top * 10n ** 18n) / bottom) / 1e18;

describe("L6 blends of blends hold every liquid in the proportion that fractions give", () => {
  const VESSELS = ["a", "b", "c"] as const;
  const step = fc.oneof(
    fc.record({ to: fc.nat({ max: 2 }), liquid: fc.nat({ max: 3 }), g: fc.integer({ min: 1, max: 300 }) }),
    fc.record({ from: fc.nat({ max: 2 }), to: fc.nat({ max: 2 }), percent: fc.integer({ min: 1, max: 99 }) }),
  );

  it("L6 against exact fractions, over random pours between three vessels", () => {
    fc.assert(
      fc.property(fc.array(step, { minLength: 5, maxLength: 30, size: "max" }), (steps) => {
        // The oracle keeps grams of each liquid per vessel; the ledger is given the same grams, as masses.
        const exact = VESSELS.map(() => new Map<string, Fraction>());
        const transfers: Transfer[] = [];
        for (const [seq, each] of steps.entries()) {
          const into = exact[each.to] as Map<string, Fraction>;
          const to = vessel(VESSELS[each.to] as string);
          if ("liquid" in each) {
            const liquidId = `liquid ${each.liquid}`;
            into.set(liquidId, plus(into.get(liquidId) ?? ZERO, { top: BigInt(each.g), bottom: 1n }));
            const amount = {
              kind: "liquid",
              liquidId,
              ethanolG: each.g / 2,
              waterG: each.g / 2,
              cost: null,
            } as const;
            transfers.push(transferAt(seq, { from: shop, to, amount }));
            continue;
          }
          const out = exact[each.from] as Map<string, Fraction>;
          if (each.from === each.to || out.size === 0) continue;
          const total = [...out.values()].reduce(plus, ZERO);
          const g = toNumber(times(total, BigInt(each.percent), 100n));
          transfers.push(
            transferAt(seq, { from: vessel(VESSELS[each.from] as string), to, amount: { kind: "mass", g } }),
          );
          for (const [id, held] of out) {
            const moved = times(held, BigInt(each.percent), 100n);
            out.set(id, minus(held, moved));
            into.set(id, plus(into.get(id) ?? ZERO, moved));
          }
        }
        const result = foldLedger(
          VESSELS.map((id) => ({ id, capacityMl: 1e6 })),
          transfers,
        );
        if (!result.ok) throw new Error(result.refusal.message);
        for (const [i, id] of VESSELS.entries()) {
          const contents = contentsOfVessel(result.state, id);
          const expected = exact[i] as Map<string, Fraction>;
          expect([...contents.keys()].toSorted()).toEqual([...expected.keys()].toSorted());
          for (const [liquidId, fraction] of expected) {
            const got = 2 * (contents.get(liquidId)?.unpricedEthanolG ?? 0);
            const want = toNumber(fraction);
            expect(Math.abs(got - want)).toBeLessThanOrEqual(1e-9 * want + 1e-15);
          }
        }
      }),
      { numRuns: 200 },
    );
  });

  it("L6 worked by hand: a third of (2 rye + 1 malt) with as much wheat", () => {
    const buy = (liquidId: string, g: number): Transfer["amount"] => ({
      kind: "liquid",
      liquidId,
      ethanolG: 0.4 * g,
      waterG: 0.6 * g,
      cost: null,
    });
    const result = foldLedger(
      ["first", "second"].map((id) => ({ id, capacityMl: 1000 })),
      [
        transferAt(1, { from: shop, to: vessel("first"), amount: buy("rye", 200) }),
        transferAt(2, { from: shop, to: vessel("first"), amount: buy("malt", 100) }),
        transferAt(3, { from: vessel("first"), to: vessel("second"), amount: { kind: "mass", g: 100 } }),
        transferAt(4, { from: shop, to: vessel("second"), amount: buy("wheat", 100) }),
      ],
    );
    if (!result.ok) throw new Error(result.refusal.message);
    const { composition } = describeContents(contentsOfVessel(result.state, "second"), new Map());
    expect(composition.map(({ liquidId, shareOfAlcohol }) => [liquidId, shareOfAlcohol])).toEqual([
      ["wheat", expect.closeTo(1 / 2, 12)],
      ["rye", expect.closeTo(1 / 3, 12)],
      ["malt", expect.closeTo(1 / 6, 12)],
    ]);
  });
});

describe("L7 a bottle topped up for years", () => {
  const LIQUIDS = ["rye", "malt", "wheat", "corn", "grain"];
  const facts = new Map<string, LiquidFacts>(
    LIQUIDS.map((id, i) => [
      id,
      {
        ageYears: 3 + i,
        grains: i === 4 ? null : [{ grain: id, share: 0.9 }],
        casks: [{ species: "American oak", held: id }],
      },
    ]),
  );
  const topUp = fc.record({
    drunkMl: fc.double({ min: 5, max: 600, noNaN: true }),
    liquidId: fc.constantFrom(...LIQUIDS),
    strength: fc.double({ min: 40, max: 68, noNaN: true }),
    cost: fc.option(fc.integer({ min: 0, max: 9000 }), { nil: null }),
  });

  it("L7 200 top-ups keep L1 and L2, and all shares add up to 1", () => {
    fc.assert(
      fc.property(fc.array(topUp, { minLength: 200, maxLength: 200, size: "max" }), (topUps) => {
        const bottle = vessel("bottle");
        let state = emptyState([{ id: "bottle", capacityMl: 700 }]);
        let seq = 0;
        const accept = (parts: Pick<Transfer, "from" | "to" | "amount">): void => {
          seq += 1;
          const result = applyTransfer(state, transferAt(seq, parts));
          if (!result.ok) throw new Error(result.refusal.message);
          state = result.state;
        };
        for (const { drunkMl, liquidId, strength, cost } of topUps) {
          if (volumeOf(contentsOfVessel(state, "bottle")) > 0)
            accept({ from: bottle, to: glass, amount: { kind: "volume", ml: drunkMl } });
          const roomMl = 690 - volumeOf(contentsOfVessel(state, "bottle"));
          const masses = liquidOfVolume(millilitres20(roomMl), abv20(strength));
          accept({ from: shop, to: bottle, amount: { kind: "liquid", liquidId, ...masses, cost } });
        }
        const { largestRelative } = trialBalance(state);
        expect(largestRelative).toBeLessThanOrEqual(1e-9);
        const contents = contentsOfVessel(state, "bottle");
        const described = describeContents(contents, facts);
        expect(described.volumeMl).toBeGreaterThan(680);
        expect(described.volumeMl).toBeLessThanOrEqual(700 * (1 + 1e-6));
        const sum = (xs: readonly number[]): number => xs.reduce((total, x) => total + x, 0);
        expect(sum(described.composition.map((part) => part.shareOfAlcohol))).toBeCloseTo(1, 12);
        expect(sum(described.composition.map((part) => part.shareOfMass))).toBeCloseTo(1, 12);
        const grains = sum(described.grainShares.map(({ share }) => share));
        expect(grains + described.unknownGrainShare).toBeCloseTo(1, 12);
        expect(sum(described.casks.map((cask) => cask.shareOfAlcohol))).toBeCloseTo(1, 12);
        expect(described.abv20).toBeGreaterThanOrEqual(40 - 1e-9);
        expect(described.abv20).toBeLessThanOrEqual(68 + 1e-9);
        expect(described.cost.perLitre === null).toBe(described.cost.unpricedShareOfMass > 0);
      }),
      { numRuns: 30 },
    );
  });
});
