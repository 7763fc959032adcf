import fc from "fast-check";
import { expect, test } from "vitest";
import { describeLiquid } from "../alcoholometry/index.ts";
import { exactSum } from "../numeric/index.ts";
import { contentsOfVessel, foldLedger, type Transfer, volumeOf } from "../ledger/index.ts";
import { grams } from "../quantity/index.ts";
import { compositionAt, keepUp, type KeptUp, type KeptUpStep } from "./index.ts";
import { leftAt } from "./keep-up.ts";

const CAPACITY = 750;

/** Steps that fit: additions of 20 to 110 g of one of nine whiskeys, pours of 10 to 60 mL, 100 where it is nearly full. */
function played(choices: readonly (readonly [pour: boolean, size: number, which: number])[]): KeptUpStep[] {
  const steps: KeptUpStep[] = [];
  let [ethanol, water] = [0, 0];
  for (const [at, [pour, size, which]] of choices.entries()) {
    const { volumeMl } = describeLiquid({ ethanolG: grams(ethanol), waterG: grams(water) });
    if ((pour && volumeMl > 70) || volumeMl > 600) {
      const ml = volumeMl > 600 ? 100 : 10 + size * 50;
      steps.push({ kind: "pour", at, ml });
      ethanol *= 1 - ml / volumeMl;
      water *= 1 - ml / volumeMl;
    } else {
      const g = 20 + size * 90;
      const strength = 0.36 + 0.02 * which;
      const added = { ethanolG: g * strength, waterG: g * (1 - strength) };
      steps.push({ kind: "add", at, liquidId: `w${which}`, ...added });
      ethanol += added.ethanolG;
      water += added.waterG;
    }
  }
  return steps;
}
const choice = fc.tuple(
  fc.boolean(),
  fc.double({ min: 0, max: 1, noNaN: true }),
  fc.integer({ min: 0, max: 8 }),
);

function folded(steps: readonly KeptUpStep[]): KeptUp {
  const found = keepUp(steps, CAPACITY);
  if (!found.ok) throw new Error(`step ${found.step} requires ${found.limitMl}, got ${found.receivedMl}`);
  return found;
}

test("U1 over 2,000 steps nothing appears or vanishes, of any liquid, to 1e-12", () => {
  fc.assert(
    fc.property(fc.array(choice, { minLength: 2000, maxLength: 2000 }), (choices) => {
      const steps = played(choices);
      const found = folded(steps);
      const last = steps.length - 1;
      for (const liquidId of new Set(found.additions.map((addition) => addition.liquidId))) {
        const of = found.additions.filter((addition) => addition.liquidId === liquidId);
        const came = exactSum(of.map(({ ethanolG }) => ethanolG));
        // What every pour took of this liquid, counted pour by pour by what was left before and after it.
        const poured = exactSum(
          steps.flatMap((step, n) =>
            step.kind === "pour"
              ? of
                  .filter((addition) => addition.step < n)
                  .map(
                    (addition) =>
                      addition.ethanolG *
                      (leftAt(found.kept, found.age, addition.step, n - 1) -
                        leftAt(found.kept, found.age, addition.step, n)),
                  )
              : [],
          ),
        );
        const there = compositionAt(found, last).find((part) => part.liquidId === liquidId)?.ethanolG ?? 0;
        expect(Math.abs(there + poured - came) / came).toBeLessThan(1e-12);
      }
      // And what the bottle holds in all, folded by itself, is the sum of what is left.
      const [ethanol, water] = (["ethanolG", "waterG"] as const).map((of) =>
        exactSum(found.additions.map((addition) => addition[of] * addition.left)),
      ) as [number, number];
      const camein = exactSum(found.additions.map(({ ethanolG }) => ethanolG));
      expect(Math.abs(ethanol - (found.ethanolG[last] as number)) / camein).toBeLessThan(1e-12);
      expect(Math.abs(water - (found.waterG[last] as number)) / camein).toBeLessThan(1e-12);
    }),
    { numRuns: 3 },
  );
});

test("U2 it is what double entry says of the same bottle", () => {
  fc.assert(
    fc.property(fc.array(choice, { minLength: 5, maxLength: 120 }), (choices) => {
      const steps = played(choices);
      const found = folded(steps);
      const bottle = { kind: "vessel", vesselId: "kept" } as const;
      const transfers = steps.map((step, n): Transfer => {
        const head = { id: `t${n}`, seq: n + 1, at: "2031-01-01T00:00:00Z" };
        if (step.kind === "pour")
          return {
            ...head,
            from: bottle,
            to: { kind: "outside", name: "glass" },
            amount: { kind: "volume", ml: step.ml },
          };
        const { liquidId, ethanolG, waterG } = step;
        return {
          ...head,
          from: { kind: "outside", name: "shop" },
          to: bottle,
          amount: { kind: "liquid", liquidId, ethanolG, waterG, cost: 0 },
        };
      });
      const ledger = foldLedger([{ id: "kept", capacityMl: CAPACITY }], transfers);
      if (!ledger.ok) throw new Error(ledger.refusal.code);
      const contents = contentsOfVessel(ledger.state, "kept");
      const last = steps.length - 1;
      const volume = found.volumeMl[last] as number;
      expect(Math.abs(volumeOf(contents) - volume)).toBeLessThan(1e-9 * Math.max(1, volume));
      for (const part of compositionAt(found, last)) {
        const held = contents.get(part.liquidId);
        const there = (held?.pricedEthanolG ?? 0) + (held?.unpricedEthanolG ?? 0);
        expect(Math.abs(there - part.ethanolG)).toBeLessThan(1e-9 * Math.max(1, there));
      }
    }),
  );
});
