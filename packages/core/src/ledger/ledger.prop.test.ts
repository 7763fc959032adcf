import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Contents } from "./contents.ts";
import { QUANTITIES } from "./holding.ts";
import {
  type Account,
  accountKey,
  type Amount,
  applyTransfer,
  contentsOfVessel,
  emptyState,
  foldLedger,
  type LedgerState,
  stateAt,
  TOLERANCE,
  type Transfer,
  trialBalance,
  undoTransfer,
  type Vessel,
  volumeOf,
  WATER,
} from "./index.ts";

/** A random history for the laws: `offered` holds what was tried, `accepted` what the ledger took of it. */
type History = {
  readonly vessels: readonly Vessel[];
  readonly offered: readonly Transfer[];
  readonly accepted: readonly Transfer[];
  readonly state: LedgerState;
};

const VESSELS: readonly Vessel[] = [
  { id: "cask", capacityMl: 20_000 },
  { id: "bottle", capacityMl: 700 },
  { id: "flask", capacityMl: 750 },
  { id: "jar", capacityMl: 250 },
  { id: "vial", capacityMl: 20 },
];
const LIQUIDS = ["rye", "malt", "wheat", "corn"] as const;

const vessel: fc.Arbitrary<Account> = fc
  .constantFrom(...VESSELS)
  .map(({ id }): Account => ({ kind: "vessel", vesselId: id }));
const sink: fc.Arbitrary<Account> = fc
  .constantFrom("glass", "drain", "air")
  .map((name): Account => ({ kind: "outside", name }));
const grams = (max: number): fc.Arbitrary<number> => fc.double({ min: 1e-3, max, noNaN: true });
/** From a drop to a bottle, each order of size as likely as the next. */
const size = fc.double({ min: -2, max: 3, noNaN: true }).map((x) => 10 ** x);
const cost = fc.option(fc.integer({ min: 0, max: 20_000 }), { nil: null });

const whiskeyIn = fc
  .record({ liquidId: fc.constantFrom(...LIQUIDS), ethanolG: grams(400), waterG: grams(400), cost })
  .map((liquid): Amount => ({ kind: "liquid", ...liquid }));
const waterIn = grams(200).map(
  (waterG): Amount => ({ kind: "liquid", liquidId: WATER, ethanolG: 0, waterG, cost: 0 }),
);
const out: fc.Arbitrary<Amount> = fc.oneof(
  { weight: 4, arbitrary: size.map((ml): Amount => ({ kind: "volume", ml })) },
  { weight: 3, arbitrary: size.map((g): Amount => ({ kind: "mass", g })) },
  { weight: 1, arbitrary: fc.constant<Amount>({ kind: "all" }) },
);
const source = (name: "shop" | "tap"): fc.Arbitrary<Account> => fc.constant({ kind: "outside", name });

const line: fc.Arbitrary<Pick<Transfer, "from" | "to" | "amount">> = fc.oneof(
  { weight: 4, arbitrary: fc.record({ from: source("shop"), to: vessel, amount: whiskeyIn }) },
  { weight: 1, arbitrary: fc.record({ from: source("tap"), to: vessel, amount: waterIn }) },
  { weight: 6, arbitrary: fc.record({ from: vessel, to: vessel, amount: out }) },
  { weight: 2, arbitrary: fc.record({ from: vessel, to: sink, amount: out }) },
);

/** Dates run in order, two hours apart, so that any moment between two transfers can be asked for. */
const dated = (seq: number): string => new Date(Date.UTC(2026, 0, 1, 2 * seq)).toISOString();

const transferAt = (seq: number, parts: Pick<Transfer, "from" | "to" | "amount">): Transfer => ({
  id: `t${seq}`,
  seq,
  at: dated(seq),
  ...parts,
});

const history: fc.Arbitrary<History> = fc
  .array(line, { minLength: 10, maxLength: 60, size: "max" })
  .map((lines) => {
    const offered = lines.map((parts, seq) => transferAt(seq, parts));
    const accepted: Transfer[] = [];
    let state = emptyState(VESSELS);
    for (const transfer of offered) {
      const result = applyTransfer(state, transfer);
      if (!result.ok) continue;
      accepted.push(transfer);
      state = result.state;
    }
    return { vessels: VESSELS, offered, accepted, state };
  });

const RUNS = { numRuns: 300 };
const REL = 1e-9;

function apply(start: LedgerState, transfers: readonly Transfer[]): LedgerState {
  return transfers.reduce((state, transfer) => {
    const result = applyTransfer(state, transfer);
    if (!result.ok) throw new Error(`${transfer.id}: ${result.refusal.message}`);
    return result.state;
  }, start);
}

/** Largest difference between two contents, relative to the larger of the two figures. */
function gap(a: Contents, b: Contents): number {
  let most = 0;
  for (const id of new Set([...a.keys(), ...b.keys()]))
    for (const quantity of QUANTITIES) {
      const [x, y] = [a.get(id)?.[quantity] ?? 0, b.get(id)?.[quantity] ?? 0];
      if (x !== y) most = Math.max(most, Math.abs(x - y) / Math.max(Math.abs(x), Math.abs(y)));
    }
  return most;
}

/** What L2 forbids, in words; nothing when the state keeps it. */
function breaksOfL2(state: LedgerState): string[] {
  return [...state.vessels.values()].flatMap(({ id, capacityMl }) => {
    const contents = contentsOfVessel(state, id);
    const low = [...contents].flatMap(([liquidId, holding]) =>
      QUANTITIES.filter((quantity) => !(holding[quantity] >= 0)).map(
        (quantity) => `${id} ${liquidId} ${quantity}`,
      ),
    );
    return volumeOf(contents) <= capacityMl * (1 + TOLERANCE) ? low : [...low, `${id} over its capacity`];
  });
}

describe("laws of the ledger, over random histories", () => {
  it("the histories are worth the name: most are long, mixed and meet both bounds", () => {
    const sample = fc.sample(history, { numRuns: 200, seed: 1 });
    const mean = sample.reduce((sum, { accepted }) => sum + accepted.length, 0) / sample.length;
    expect(mean).toBeGreaterThan(10);
    const blends = sample.filter(({ state }) =>
      VESSELS.some(({ id }) => contentsOfVessel(state, id).size >= 3),
    );
    expect(blends.length).toBeGreaterThan(100);
    const codes = new Set(
      sample.flatMap(({ vessels, offered }) => {
        const result = foldLedger(vessels, offered);
        return result.ok ? [] : [result.refusal.code];
      }),
    );
    expect([...codes]).toEqual(expect.arrayContaining(["vessel_overflow", "vessel_short", "vessel_empty"]));
  });

  it("L1 nothing appears or vanishes", () => {
    fc.assert(
      fc.property(history, ({ state }) => {
        expect(trialBalance(state).largestRelative).toBeLessThanOrEqual(REL);
      }),
      RUNS,
    );
  });

  it("L2 no vessel below nothing or above its capacity, at any step", () => {
    fc.assert(
      fc.property(history, ({ vessels, accepted }) => {
        let state = emptyState(vessels);
        for (const transfer of accepted) {
          state = apply(state, [transfer]);
          expect(breaksOfL2(state)).toEqual([]);
        }
      }),
      { numRuns: 100 },
    );
  });

  it("L3 transfers that share no vessel may change places", () => {
    let swapped = 0;
    fc.assert(
      fc.property(history, fc.nat(), ({ vessels, accepted }, pick) => {
        const touched = ({ from, to }: Transfer): Account[] =>
          [from, to].filter(({ kind }) => kind === "vessel");
        const apart = accepted.slice(1).flatMap((second, i) => {
          const first = accepted[i] as Transfer;
          const keys = new Set(touched(first).map(accountKey));
          return touched(second).some((account) => keys.has(accountKey(account))) ? [] : [i];
        });
        const i = apart[pick % apart.length];
        if (i === undefined) return;
        swapped += 1;
        const [first, second] = [accepted[i] as Transfer, accepted[i + 1] as Transfer];
        const other = accepted
          .with(i, { ...second, seq: first.seq })
          .with(i + 1, { ...first, seq: second.seq });
        const [a, b] = [apply(emptyState(vessels), accepted), apply(emptyState(vessels), other)];
        for (const { id } of vessels) expect(contentsOfVessel(b, id)).toEqual(contentsOfVessel(a, id));
        for (const [key, contents] of a.accounts)
          expect(gap(contents, b.accounts.get(key) ?? new Map())).toBeLessThanOrEqual(REL);
      }),
      RUNS,
    );
    expect(swapped).toBeGreaterThan(RUNS.numRuns / 2);
  });

  it("L4 undoing the last transfer gives back exactly the state before it", () => {
    fc.assert(
      fc.property(history, ({ vessels, accepted }) => {
        const last = accepted.at(-1);
        if (last === undefined) return;
        const undone = undoTransfer(vessels, accepted, last.id);
        expect(undone.ok && undone.state).toEqual(apply(emptyState(vessels), accepted.slice(0, -1)));
      }),
      RUNS,
    );
  });

  it("L4, R11 undoing any transfer is as if it never was, or names all that stand in the way", () => {
    let [done, refused] = [0, 0];
    fc.assert(
      fc.property(history, fc.nat(), ({ vessels, accepted }, pick) => {
        const target = accepted[pick % accepted.length];
        if (target === undefined) return;
        const undone = undoTransfer(vessels, accepted, target.id);
        done += undone.ok ? 1 : 0;
        refused += undone.ok ? 0 : 1;
        const named = new Set(undone.ok ? [] : undone.broken.map(({ transferId }) => transferId));
        expect(named.size === 0).toBe(undone.ok);
        const rest = accepted.filter(({ id }) => id !== target.id && !named.has(id));
        const state = apply(emptyState(vessels), rest);
        expect(undone.ok ? undone.state : state).toEqual(state);
        expect(foldLedger(vessels, undone.ok ? undone.transfers : rest)).toEqual({ ok: true, state });
      }),
      RUNS,
    );
    expect(Math.min(done, refused)).toBeGreaterThan(20);
  });

  it("L5 a pour split in two leaves what one pour leaves", () => {
    const share = fc.double({ min: 0.001, max: 0.999, noNaN: true });
    fc.assert(
      fc.property(
        history,
        share,
        share,
        fc.constantFrom("volume", "mass"),
        ({ state }, pour, split, kind) => {
          const [from, to]: Account[] = [
            { kind: "vessel", vesselId: "bottle" },
            { kind: "outside", name: "glass" },
          ] as const;
          const held = contentsOfVessel(state, "bottle");
          if (held.size === 0 || from === undefined || to === undefined) return;
          const whole = pour * volumeOf(held);
          const seq = (state.lastSeq ?? 0) + 1;
          const amount = (x: number): Transfer["amount"] =>
            kind === "volume" ? { kind: "volume", ml: x } : { kind: "mass", g: x * 0.75 };
          const once = apply(state, [transferAt(seq, { from, to, amount: amount(whole) })]);
          const twice = apply(state, [
            transferAt(seq, { from, to, amount: amount(whole * split) }),
            transferAt(seq + 1, { from, to, amount: amount(whole * (1 - split)) }),
          ]);
          for (const [key, contents] of once.accounts)
            expect(gap(contents, twice.accounts.get(key) ?? new Map())).toBeLessThanOrEqual(REL);
        },
      ),
      RUNS,
    );
  });

  it("L8 one at a time equals the whole fold, whatever the order of the list", () => {
    const shuffled = history.chain((past) =>
      fc
        .shuffledSubarray([...past.accepted], { minLength: past.accepted.length })
        .map((list) => ({ past, list })),
    );
    fc.assert(
      fc.property(shuffled, ({ past: { vessels, accepted, state }, list }) => {
        expect(foldLedger(vessels, accepted)).toEqual({ ok: true, state });
        expect(foldLedger(vessels, list)).toEqual({ ok: true, state });
      }),
      RUNS,
    );
  });

  it("L9 a refusal changes neither the state nor the transfer, and the fold stops at the same one", () => {
    let refusals = 0;
    fc.assert(
      fc.property(history, ({ vessels, offered }) => {
        let state = emptyState(vessels);
        let stop: { code: string; transferId: string } | null = null;
        for (const transfer of offered) {
          const before = structuredClone({ state, transfer });
          const result = applyTransfer(state, transfer);
          expect({ state, transfer }).toEqual(before);
          if (result.ok) {
            state = result.state;
            continue;
          }
          refusals += 1;
          stop = { code: result.refusal.code, transferId: transfer.id };
          break;
        }
        const whole = foldLedger(vessels, offered);
        expect(whole).toMatchObject(stop === null ? { ok: true, state } : { ok: false, refusal: stop });
      }),
      RUNS,
    );
    expect(refusals).toBeGreaterThan(RUNS.numRuns / 2);
  });

  it("L10 the state at a moment is the fold of what had happened by then", () => {
    fc.assert(
      fc.property(history, fc.nat({ max: 60 }), ({ vessels, accepted }, moment) => {
        const by = accepted.filter(({ seq }) => seq <= moment);
        expect(stateAt(vessels, accepted, dated(moment))).toEqual({
          ok: true,
          state: apply(emptyState(vessels), by),
        });
      }),
      { numRuns: 100 },
    );
  });
});
