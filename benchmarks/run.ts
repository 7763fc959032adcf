import { abv20FromDensity, density, massFractionFromDensity, mixParts } from "@partsproof/core/alcoholometry";
import { abv20, celsius, kgPerM3, massFraction, millilitres20 } from "@partsproof/core/quantity";
import { bareHorner } from "./bare-horner.ts";
import { type Case, timed } from "./timed.ts";

// `npm run bench`: what density, strength and a what-if cost beside the bare arithmetic of the formula, in the same run; then each subject of README.md.

/**
 * So many inputs over the whole liquid domain, by a fixed low-discrepancy walk: the same every run. Few enough to stay in the
 * processor's own memory, so that the arithmetic is timed and not the fetching.
 */
const SIZE = 256;
const at = (k: number, step: number): number => (k * step) % 1;
const points = Array.from({ length: SIZE }, (_, k) => {
  const t = -20 + 60 * at(k, 0.618_033_988_749_894_9);
  const weakest = t < 0 ? 0.3 : 0;
  return { t: celsius(t), p: massFraction(weakest + (1 - weakest) * at(k, 0.754_877_666_246_692_8)) };
});
const densities = points.map(({ p, t }) => ({ t, rho: kgPerM3(density(p, t)) }));
const recipes = Array.from({ length: SIZE }, (_, k) =>
  [0.1, 0.3, 0.5, 0.7].map((shift, n) => ({
    parts: 1 + ((k + n) % 4),
    abv20: abv20(40 + 30 * ((shift + at(k, 0.618_033_988_749_894_9)) % 1)),
  })),
);
const total = millilitres20(700);

function sum<Row>(rows: readonly Row[], f: (row: Row) => number): () => number {
  return () => {
    let all = 0;
    for (const row of rows) all += f(row);
    return all;
  };
}

interface Bounded extends Case {
  /** At most so many bare loops, and at most so many nanoseconds. */
  readonly times?: number;
  readonly nanoseconds?: number;
}

const cases: readonly Bounded[] = [
  { name: "bare Horner loop, 54 terms", size: SIZE, run: sum(points, ({ p, t }) => bareHorner(p, t)) },
  { name: "density", size: SIZE, times: 1.3, run: sum(points, ({ p, t }) => density(p, t)) },
  {
    name: "mass fraction from density",
    size: SIZE,
    run: sum(densities, ({ rho, t }) => massFractionFromDensity(rho, t) ?? Number.NaN),
  },
  {
    name: "strength from density",
    size: SIZE,
    times: 8,
    run: sum(densities, ({ rho, t }) => abv20FromDensity(rho, t) ?? Number.NaN),
  },
  {
    name: "four-part what-if",
    size: SIZE,
    times: 40,
    nanoseconds: 50_000,
    run: sum(recipes, (parts) => mixParts(parts, total).abv20),
  },
];

const medians = timed(cases, 1001);
const bare = medians[0] ?? Number.NaN;
let missed = 0;
console.log("| what | median, ns | times bare | bound | |");
console.log("| --- | ---: | ---: | --- | --- |");
for (const [n, one] of cases.entries()) {
  const median = medians[n] ?? Number.NaN;
  const times = median / bare;
  const bounds = [
    ...(one.times === undefined ? [] : [`<= ${one.times} times`]),
    ...(one.nanoseconds === undefined ? [] : [`< ${one.nanoseconds / 1000} µs`]),
  ];
  const kept = times <= (one.times ?? Infinity) && median < (one.nanoseconds ?? Infinity);
  if (!kept) missed++;
  const verdict = bounds.length === 0 ? "" : kept ? "kept" : "MISSED";
  console.log(
    `| ${one.name} | ${median.toFixed(1)} | ${times.toFixed(2)} | ${bounds.join(", ")} | ${verdict} |`,
  );
}
// Each is loaded when its turn comes: what looks at the memory of this process, or asks a server as its clients, comes before what fills it.
const others: readonly (() => Promise<number>)[] = [
  async () => (await import("./search.ts")).benchSearch(),
  async () => (await import("./notes.ts")).benchNotes(),
  async () => (await import("./filling.ts")).benchFilling(),
  async () => (await import("./rule-texts.ts")).benchRuleTexts(),
  async () => (await import("./worths.ts")).benchWorths(),
  async () => (await import("./worths-of-many-sheets.ts")).benchManySheets(),
  async () => (await import("./trend-test.ts")).benchTrendTest(),
  async () => (await import("./kept-up.ts")).benchKeptUp(),
  async () => (await import("./stream-plot.ts")).benchStreamPlot(),
  async () => (await import("./next-flight.ts")).benchNextFlight(),
  async () => (await import("./palate.ts")).benchPalate(),
  async () => (await import("./load.ts")).benchLoad(),
  async () => (await import("./told-elsewhere.ts")).benchToldElsewhere(),
  async () => (await import("./house-while-searching.ts")).benchHouseWhileSearching(),
  async () => (await import("./ended-searches.ts")).benchEndedSearches(),
  async () => (await import("./findings.ts")).benchFindings(),
  async () => (await import("./household-file.ts")).benchHouseholdFile(),
];
for (const bench of others) missed += await bench();
if (missed > 0) process.exitCode = 1;
