import { drawnRanking, pooledWorths, rankedSet, repeatableRng, shuffled } from "@partsproof/core/statistics";
import { boundedTable } from "./bounded-table.ts";
import { middle } from "./middle.ts";

// Worths of 80 items from two thousand sheets of five glasses, by twelve judges and sixty guests who came once.

const MOST_MS = 2000;
const [SHEETS, ITEMS, GLASSES, JUDGES, GUESTS] = [2000, 80, 5, 12, 60];

function manySheets() {
  const rng = repeatableRng(41);
  const all = Array.from({ length: ITEMS }, (_, i) => i);
  return Array.from({ length: SHEETS }, (_, sheet) => {
    const poured = shuffled(all, rng).slice(0, GLASSES);
    const ranks = drawnRanking(
      poured.map((item) => item / 40),
      rng,
    );
    const order = poured.toSorted(
      (a, b) => (ranks[poured.indexOf(a)] ?? 0) - (ranks[poured.indexOf(b)] ?? 0),
    );
    const places = order.map((item) => [item]);
    return { judge: sheet < GUESTS ? JUDGES + sheet : sheet % JUDGES, set: rankedSet(places, ITEMS) };
  });
}

/** How many bounds were missed. */
export function benchManySheets(): number {
  const sets = manySheets();
  const times = Array.from({ length: 5 }, () => {
    const from = performance.now();
    pooledWorths(sets, ITEMS, { rng: repeatableRng(42) });
    return performance.now() - from;
  });
  const name = `${SHEETS} sheets of ${GLASSES} out of ${ITEMS}, ${JUDGES} judges and ${GUESTS} guests`;
  const first = `first ${(times[0] ?? Number.NaN).toFixed(0)} ms`;
  return boundedTable("worths of many sheets, median of 5", [
    { name, value: middle(times), unit: "ms", most: MOST_MS, beside: first },
  ]);
}
