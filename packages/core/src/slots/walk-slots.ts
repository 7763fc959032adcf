import { ALIKE } from "./alike-order.ts";
import type { PairCosts } from "./pair-costs.ts";

/** What the walk is told, and whom it tells. Slots and candidates are by their places. */
export type Walked = {
  readonly costs: PairCosts;
  /** Strength by slot and candidate, its share of it, and what the mix's may be off: null where it does not count. */
  readonly strength: {
    readonly adds: readonly Float64Array[];
    /** Between these a mean by volume may cost nothing; outside, so much a squared unit. */
    readonly low: number;
    readonly high: number;
    readonly weight: number;
  } | null;
  /** By slot and candidate: what its own age costs at least, being too young; of a mix, the most of its parts' costs. */
  readonly young: readonly Float64Array[];
  readonly fits: (slotA: number, a: number, slotB: number, b: number) => boolean;
  /** One number. What does not come below it is left out; it falls while better ones are offered. */
  readonly limit: Float64Array;
  readonly offer: (chosen: Int32Array) => void;
  /** Choices looked at before it is given up. */
  readonly most: number;
};

const minimum = (row: ArrayLike<number>, from = 0, to = row.length): number => {
  let least = Infinity;
  for (let n = from; n < to; n += 1) if (row[n]! < least) least = row[n]!;
  return least;
};

/**
 * Branch and bound, slot by slot. Below a choice for the first slots no filling costs less than what is chosen, plus for every open slot its
 * cheapest candidate beside what is chosen, plus for every two open slots their cheapest pair, plus what the strength and the
 * age still cost at the best. Nothing is left out that could come below the limit.
 */
export function walkSlots(walked: Walked): { readonly through: boolean; readonly looked: number } {
  const { costs, strength, young, fits, limit, offer, most } = walked;
  const { own, pair } = costs;
  const slots = own.length;
  const last = slots - 1;
  const counts = own.map((row) => row.length);
  // By slot and candidate: its cheapest pairs with all later slots together; by slot, the cheapest of all pairs from it on.
  const ahead = own.map((row, slot) =>
    row.map((_, n) => {
      let sum = 0;
      for (let later = slot + 1; later < slots; later += 1)
        sum += minimum(pair[slot]![later]!, n * counts[later]!, (n + 1) * counts[later]!);
      return sum;
    }),
  );
  const pairsFrom = new Float64Array(slots + 1);
  for (let slot = last; slot >= 0; slot -= 1) {
    pairsFrom[slot] = pairsFrom[slot + 1]!;
    for (let later = slot + 1; later < slots; later += 1) pairsFrom[slot]! += minimum(pair[slot]![later]!);
  }
  const weakest = new Float64Array(slots + 1);
  const strongest = new Float64Array(slots + 1);
  for (let slot = last; slot >= 0; slot -= 1) {
    const shares = strength?.adds[slot];
    if (shares === undefined) break;
    weakest[slot] = weakest[slot + 1]! + minimum(shares);
    strongest[slot] = strongest[slot + 1]! - minimum(shares.map((value) => -value));
  }
  // By depth and slot: what each candidate costs beside what is chosen so far.
  const beside = own.map(() => own.map((row) => Float64Array.from(row)));
  // Of the last slot, by run: its cheapest candidate beside what is chosen, and its cheapest pair with each candidate before.
  const runs = Math.ceil(counts[last]! / ALIKE);
  const cheapest = new Float64Array(runs);
  const runsOf = (row: Float64Array, at: number, into: Float64Array, to: number): void => {
    for (let run = 0; run < runs; run += 1)
      into[to + run] = minimum(row, at + run * ALIKE, at + Math.min(counts[last]!, (run + 1) * ALIKE));
  };
  const pairRuns = new Float64Array(runs * (counts[last - 1] ?? 0));
  for (let n = 0; n < (counts[last - 1] ?? 0); n += 1)
    runsOf(pair[last - 1]![last]!, n * counts[last]!, pairRuns, n * runs);
  const boundsAt = own.map(({ length }) => new Float64Array(length));
  const chosen = new Int32Array(slots);
  let looked = 0;

  const open = (slot: number, cost: number, mean: number, youth: number): boolean => {
    const row = beside[slot]![slot]!;
    const strengths = strength?.adds[slot];
    let rest = pairsFrom[slot + 1]!;
    for (let later = slot + 1; later < slots; later += 1) rest += minimum(beside[slot]![later]!);
    const bounds = boundsAt[slot]!;
    const years = young[slot]!;
    const on = ahead[slot]!;
    const [weak, strong] = [weakest[slot + 1]!, strongest[slot + 1]!];
    for (let n = 0; n < row.length; n += 1) {
      let sum = cost + row[n]! + rest + on[n]! + (years[n]! > youth ? years[n]! : youth);
      if (strength !== null) {
        const mixed = mean + strengths![n]!;
        const lacks = strength.low - mixed - strong;
        const over = mixed + weak - strength.high;
        const off = lacks > over ? lacks : over;
        if (off > 0) sum += strength.weight * off * off;
      }
      bounds[n] = sum;
    }
    looked += row.length;
    if (slot >= last - 1) {
      if (slot < last) runsOf(beside[slot]![last]!, 0, cheapest, 0);
      // Too many to be put into an order each time: gone through as they stand.
      for (let n = 0; n < row.length; n += 1)
        if (bounds[n]! < limit[0]! && fitsChosen(slot, n)) {
          chosen[slot] = n;
          if (slot === last) offer(chosen);
          else close(n, cost + row[n]!, mean + (strengths?.[n] ?? 0), Math.max(youth, young[slot]![n]!));
        }
      return looked <= most;
    }
    // The most promising first.
    const order = Uint32Array.from(row, (_, n) => n).toSorted((a, b) => bounds[a]! - bounds[b]! || a - b);
    for (const n of order) {
      if (bounds[n]! >= limit[0]!) break;
      if (!fitsChosen(slot, n)) continue;
      chosen[slot] = n;
      for (let later = slot + 1; later < slots; later += 1) {
        const table = pair[slot]![later]!;
        const [from, to] = [beside[slot]![later]!, beside[slot + 1]![later]!];
        const at = n * counts[later]!;
        for (let m = 0; m < to.length; m += 1) to[m] = from[m]! + table[at + m]!;
        looked += to.length;
      }
      const mixed = mean + (strengths?.[n] ?? 0);
      if (!open(slot + 1, cost + row[n]!, mixed, Math.max(youth, young[slot]![n]!))) return false;
    }
    return true;
  };

  /** The last slot, which most of the time goes into: a run of alike candidates at a time, then each of it. */
  const close = (n: number, cost: number, mean: number, youth: number): void => {
    const from = beside[last - 1]![last]!;
    const table = pair[last - 1]![last]!;
    const at = n * from.length;
    const years = young[last]!;
    const strengths = strength?.adds[last];
    let threshold = limit[0]! - cost;
    looked += runs;
    for (let run = 0; run < runs; run += 1) {
      if (cheapest[run]! + pairRuns[n * runs + run]! + youth >= threshold) continue;
      const end = Math.min(from.length, (run + 1) * ALIKE);
      looked += ALIKE;
      for (let m = run * ALIKE; m < end; m += 1) {
        let sum = from[m]! + table[at + m]! + youth;
        if (sum >= threshold) continue;
        if (years[m]! > youth) sum += years[m]! - youth;
        if (strength !== null) {
          const mixed = mean + strengths![m]!;
          const off = mixed < strength.low ? strength.low - mixed : mixed - strength.high;
          if (off > 0) sum += strength.weight * off * off;
        }
        if (sum >= threshold || !fitsChosen(last, m)) continue;
        chosen[last] = m;
        offer(chosen);
        threshold = limit[0]! - cost;
      }
    }
  };

  const fitsChosen = (slot: number, n: number): boolean => {
    for (let other = 0; other < slot; other += 1) if (!fits(other, chosen[other]!, slot, n)) return false;
    return true;
  };

  const through = open(0, 0, 0, 0);
  return { through, looked };
}
