/** One thing to time: `run` does it for every one of `size` prepared inputs and gives back something that depends on all. */
export interface Case {
  readonly name: string;
  readonly size: number;
  readonly run: () => number;
}

/**
 * Median nanoseconds for one input of each case. The cases take turns within every round, so that a slow spell of the machine
 * falls on all of them; the rounds of the first second are warm-up.
 */
export function timed(cases: readonly Case[], rounds: number): readonly number[] {
  const times = cases.map((): number[] => []);
  let kept = 0;
  const warm = performance.now() + 1000;
  for (let round = 0; round < rounds || performance.now() < warm; round++) {
    const warmedUp = performance.now() >= warm;
    for (const [n, one] of cases.entries()) {
      const start = performance.now();
      kept += one.run();
      const nanoseconds = ((performance.now() - start) * 1e6) / one.size;
      if (warmedUp) times[n]?.push(nanoseconds);
    }
    if (!warmedUp) round = -1;
  }
  if (!Number.isFinite(kept)) throw new Error(`benchmark requires finite results, got ${kept}`);
  return times.map((all) => all.toSorted((a, b) => a - b)[Math.floor(all.length / 2)] ?? Number.NaN);
}
