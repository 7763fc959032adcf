import { learnLevels } from "@partsproof/core/palate";
import { repeatableRng } from "@partsproof/core/statistics";
import { middle } from "./middle.ts";

// What 60 whiskeys taste of, from 300 notes by five tasters, two in five of mixes, each of all 40 attributes.

const BOUND_MS = 5000;
const [WHISKEYS, ATTRIBUTES, NOTES, TASTERS] = [60, 40, 300, 5];

function largeTable() {
  const rng = repeatableRng(5);
  const levels = Array.from({ length: WHISKEYS }, () =>
    Array.from({ length: ATTRIBUTES }, () => 1 + rng.below(8)),
  );
  return {
    whiskeys: levels.map((_, n) => ({
      id: `w${n}`,
      label: {
        ageYears: 3 + rng.below(20),
        abv: 40 + rng.below(20),
        kind: "malt",
        grains: null,
        casks: null,
      },
    })),
    notes: Array.from({ length: NOTES }, () => {
      const poured = Array.from({ length: rng.below(5) < 2 ? 3 : 1 }, () => rng.below(WHISKEYS));
      return {
        taster: `t${rng.below(TASTERS)}`,
        parts: Object.fromEntries(poured.map((n) => [`w${n}`, 1])),
        says: Object.fromEntries(
          Array.from({ length: ATTRIBUTES }, (_, a) => {
            const mean = poured.reduce((sum, n) => sum + (levels[n]?.[a] ?? 0), 0) / poured.length;
            return [`a${a}`, { mean: Math.round(mean) + rng.below(3) - 1, sd: 1 }];
          }),
        ),
      };
    }),
  };
}

/** How many bounds were missed: the median of five. */
export function benchPalate(): number {
  const { whiskeys, notes } = largeTable();
  const times = Array.from({ length: 5 }, () => {
    const start = performance.now();
    const before = process.cpuUsage();
    learnLevels(whiskeys, notes);
    const { user, system } = process.cpuUsage(before);
    return { ms: performance.now() - start, cpu: (user + system) / 1000 };
  });
  const median = middle(times.map(({ ms }) => ms));
  console.log(
    `learned palate, ${WHISKEYS} whiskeys, ${ATTRIBUTES} attributes, ${NOTES} notes: median ${median.toFixed(0)} ms (bound ${BOUND_MS}); processor ${middle(times.map(({ cpu }) => cpu)).toFixed(0)} ms`,
  );
  return median <= BOUND_MS ? 0 : 1;
}
