/** Why the most likely log worths do not exist: some of them would be infinitely far apart. */
export interface NoMaximum {
  readonly ok: false;
  /**
   * `never_compared`: the two groups have never met. `always_ahead`: no item of `ahead` was ever placed behind one of `behind`.
   * `runs_away`: a tie or order-of-serving parameter grows without end, together with the worths.
   */
  readonly code: "never_compared" | "always_ahead" | "runs_away";
  readonly ahead: readonly number[];
  readonly behind: readonly number[];
}

/** All that can be reached from `start` along the edges. */
function reached(start: number, edges: readonly ReadonlySet<number>[]): Set<number> {
  const seen = new Set([start]);
  const open = [start];
  for (let at = open.pop(); at !== undefined; at = open.pop()) {
    for (const to of edges[at] ?? []) {
      if (seen.has(to)) continue;
      seen.add(to);
      open.push(to);
    }
  }
  return seen;
}

/**
 * Whether every way to split the items in two has a win (or tie) in both directions, as the most likely worths need; else a split
 * that has not.
 *
 * Source: Ford, Amer. Math. Monthly 64 (1957) 28; Hunter, Ann. Stat. 32 (2004) 384, assumption 1 (both from memory).
 *
 * @param beat `beat[i]` holds the items that i was placed ahead of or level with at least once
 * @returns null when the items hang together
 */
export function splitOf(beat: readonly ReadonlySet<number>[]): NoMaximum | null {
  const n = beat.length;
  const lost: Set<number>[] = Array.from({ length: n }, () => new Set());
  beat.forEach((losers, winner) => losers.forEach((loser) => lost[loser]?.add(winner)));
  const either = beat.map((losers, i) => new Set([...losers, ...(lost[i] ?? [])]));
  const others = (some: ReadonlySet<number>): number[] => beat.flatMap((_, i) => (some.has(i) ? [] : [i]));
  const met = reached(0, either);
  if (met.size < n)
    return {
      ok: false,
      code: "never_compared",
      ahead: [...met].toSorted((a, b) => a - b),
      behind: others(met),
    };
  for (const [edges, down] of [
    [beat, true],
    [lost, false],
  ] as const) {
    const some = reached(0, edges);
    if (some.size === n) continue;
    // Nothing in `some` was ever ahead of (behind) the rest.
    const group = [...some].toSorted((a, b) => a - b);
    const rest = others(some);
    return { ok: false, code: "always_ahead", ahead: down ? rest : group, behind: down ? group : rest };
  }
  return null;
}
