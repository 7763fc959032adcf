import { type Problem, type SearchResult, startSearch } from "@partsproof/core/blending";
import { byHighs } from "./highs-mip.ts";
import { bestOfAll } from "./plain-enumeration.ts";
import { drawn, KINDS, type Kind, problemOf } from "./search-problems.ts";

// What the exact search costs, and beside what. Every line is one run; medians of several problems.

const long = process.env["PARTSPROOF_LONG"] === "1";
const quantile = (values: readonly number[], q: number): number =>
  values.toSorted((a, b) => a - b)[Math.max(0, Math.ceil(q * values.length) - 1)] ?? Number.NaN;
const ms = (value: number): string => (value < 10 ? value.toFixed(1) : value.toFixed(0));

interface Timed {
  readonly milliseconds: number;
  /** What the process itself had of the processor meanwhile: on a busy machine the clock says more. */
  readonly processor: number;
  /** Bound and best after one second, when it was not done by then. */
  readonly gapAtOneSecond: number | null;
  readonly result: SearchResult;
}

/** Runs a search to its proof, or to the limit. */
function run(problem: Problem, top: number, limit = Infinity): Timed {
  const start = performance.now();
  const before = process.cpuUsage();
  const search = startSearch(problem, top);
  let gapAtOneSecond: number | null = null;
  for (;;) {
    const { done, gap } = search.step(20);
    const milliseconds = performance.now() - start;
    if (!done && gapAtOneSecond === null && milliseconds >= 1000) gapAtOneSecond = gap;
    if (!done && milliseconds < limit) continue;
    const { user, system } = process.cpuUsage(before);
    const processor = (user + system) / 1000;
    return { milliseconds, processor, gapAtOneSecond, result: search.result() };
  }
}

let missed = 0;
const verdict = (kept: boolean): string => {
  if (!kept) missed += 1;
  return kept ? "kept" : "MISSED";
};

/** Runs both counts of a bound that a speed is held against. */
function provenLists(
  n: number,
  seeds: number,
  bounds: { readonly median: number; readonly p95: number },
): void {
  const all: number[] = [];
  const open: number[] = [];
  for (const kind of KINDS) {
    const times: number[] = [];
    const own: number[] = [];
    let nodes = 0;
    for (let seed = 1; seed <= seeds; seed += 1) {
      const { milliseconds, processor, gapAtOneSecond, result } = run(
        problemOf(drawn(kind, n, 24, seed)),
        20,
      );
      if (!result.provenOptimal || result.recipes.length !== 20)
        throw new Error(`not proven: ${kind} ${seed}`);
      times.push(milliseconds);
      own.push(processor);
      nodes += result.nodes / seeds;
      if (gapAtOneSecond !== null) open.push(gapAtOneSecond);
    }
    all.push(...times);
    console.log(
      `| n = ${n}, ${kind} (${seeds}) | ${ms(quantile(times, 0.5))} | ${ms(quantile(times, 0.95))} | ${ms(Math.max(...times))} | ${ms(quantile(own, 0.5))} | ${nodes.toFixed(0)} | |`,
    );
  }
  const median = quantile(all, 0.5);
  const p95 = quantile(all, 0.95);
  console.log(
    `| n = ${n}, all (${all.length}) | ${ms(median)} | ${ms(p95)} | ${ms(Math.max(...all))} | | | ${verdict(median <= bounds.median && p95 <= bounds.p95)} (median <= ${bounds.median}, p95 <= ${bounds.p95} ms) |`,
  );
  if (open.length > 0)
    console.log(
      `\n${open.length} of ${all.length} took over a second; proven gap at one second: median ${quantile(open, 0.5).toFixed(3)}, largest ${Math.max(...open).toFixed(3)}\n`,
    );
}

function memory(): void {
  const { rss, heapUsed, arrayBuffers } = process.memoryUsage();
  const mb = (bytes: number): string => `${(bytes / 2 ** 20).toFixed(0)} MB`;
  const kept = rss / 2 ** 20 <= 300;
  console.log(
    `\nMemory after these: ${mb(rss)} resident (heap ${mb(heapUsed)}, arrays ${mb(arrayBuffers)}): ${verdict(kept)} (<= 300 MB)\n`,
  );
}

async function besideHighs(kinds: readonly Kind[], secondsEach: number): Promise<void> {
  console.log(
    "| absolute distance, n = 60, 24 attributes | search, ms | HiGHS, ms | times | |\n| --- | ---: | ---: | ---: | --- |",
  );
  for (const kind of kinds) {
    const { shelf, target } = drawn(kind, 60, 24, 2);
    const problem = problemOf({ shelf, target }, { distance: "absolute" });
    const runs = Array.from({ length: 9 }, () => run(problem, 1));
    const own = quantile(
      runs.map(({ milliseconds }) => milliseconds),
      0.5,
    );
    const highs = await byHighs(shelf, target, 4, 12, secondsEach);
    const times = highs.milliseconds / own;
    const best = runs[0]?.result.recipes[0]?.distance ?? Number.NaN;
    const same =
      highs.distance === null
        ? "HiGHS stopped by time"
        : Math.abs(highs.distance - best) < 1e-6
          ? "same optimum"
          : "OTHER OPTIMUM";
    if (same === "OTHER OPTIMUM") missed += 1;
    console.log(
      `| ${kind} | ${ms(own)} | ${ms(highs.milliseconds)} | ${times.toFixed(0)} | ${same}; ${verdict(times >= 100)} (>= 100 times) |`,
    );
  }
}

/** Like beside like: enumeration gives the best alone, so that is what is asked of the search; what all twenty take stands beside it. */
function besideEnumeration(): void {
  console.log(
    "\n| n = 120, K = 3, P = 12 | every recipe, ms | recipes | the best by search, ms | times | | twenty by search, ms | times |\n| --- | ---: | ---: | ---: | ---: | --- | ---: | ---: |",
  );
  for (const kind of long ? KINDS : KINDS.slice(0, 1)) {
    const { shelf, target } = drawn(kind, 120, 24, 1);
    const problem = problemOf({ shelf, target }, { maxBottles: 3 });
    // In turns, so that a slow spell of the machine falls on both.
    const times = { one: [] as number[], twenty: [] as number[], all: [] as number[] };
    let recipes = 0;
    for (let round = 0; round < 3; round += 1) {
      for (let n = 0; n < 17; n += 1) {
        times.one.push(run(problem, 1).milliseconds);
        times.twenty.push(run(problem, 20).milliseconds);
      }
      const start = performance.now();
      const found = bestOfAll(shelf, target, 3, 12);
      times.all.push(performance.now() - start);
      recipes = found.recipes;
      const own = run(problem, 1).result.recipes[0]?.distance ?? Number.NaN;
      if (!(Math.abs(found.distance - own) <= 1e-9))
        throw new Error(`enumeration found ${found.distance}, the search ${own}`);
    }
    const [one, twenty, all] = [times.one, times.twenty, times.all].map((some) => quantile(some, 0.5)) as [
      number,
      number,
      number,
    ];
    console.log(
      `| ${kind} | ${ms(all)} | ${recipes} | ${ms(one)} | ${(all / one).toFixed(0)} | ${verdict(all / one >= 1000)} (>= 1,000 times) | ${ms(twenty)} | ${(all / twenty).toFixed(0)} |`,
    );
  }
}

function growth(): void {
  const seeds = long ? 5 : 1;
  console.log(
    "\n| n | K | P | attributes | median ms | nodes | in a second? |\n| ---: | ---: | ---: | ---: | ---: | ---: | --- |",
  );
  const base = { n: 120, K: 4, P: 12, d: 24 };
  const steps = [
    ...[60, 120, 250, 500, 1000].map((n) => ({ ...base, n })),
    ...[2, 3, 5, 6].map((K) => ({ ...base, K })),
    ...[6, 20, 30].map((P) => ({ ...base, P })),
    ...[4, 8, 12, 40].map((d) => ({ ...base, d })),
  ];
  for (const { n, K, P, d } of steps) {
    const runs = KINDS.flatMap((kind) =>
      Array.from({ length: seeds }, (_, seed) =>
        run(problemOf(drawn(kind, n, d, seed + 1), { maxBottles: K, maxParts: P }), 20, long ? 60_000 : 2500),
      ),
    );
    const nodes = quantile(
      runs.map(({ result }) => result.nodes),
      0.5,
    );
    const within = runs.filter(
      ({ milliseconds, result }) => result.provenOptimal && milliseconds <= 1000,
    ).length;
    const gaps = runs.map(({ gapAtOneSecond }) => gapAtOneSecond ?? 0);
    console.log(
      `| ${n} | ${K} | ${P} | ${d} | ${ms(
        quantile(
          runs.map(({ milliseconds }) => milliseconds),
          0.5,
        ),
      )} | ${nodes} | ${within} of ${runs.length}${within < runs.length ? `, largest gap then ${Math.max(...gaps).toFixed(2)}` : ""} |`,
    );
  }
}

/** Prints all tables; gives how many bounds were missed. */
export async function benchSearch(): Promise<number> {
  for (const kind of KINDS)
    for (let seed = 1; seed <= 4; seed += 1) run(problemOf(drawn(kind, 60, 24, seed)), 20);
  console.log(
    "\n| proven top 20, K = 4, P = 12, 24 attributes | median ms | 95th | largest | processor, median | nodes | |\n| --- | ---: | ---: | ---: | ---: | ---: | --- |",
  );
  provenLists(60, 15, { median: 50, p95: 50 });
  provenLists(500, 17, { median: 1000, p95: 3000 });
  memory();
  await besideHighs(long ? KINDS : ["target outside the hull", "spread shelf"], long ? 600 : 12);
  besideEnumeration();
  growth();
  return missed;
}
