/** Why the best of what was tried is poured again. */
export const whyAnchor = (best: number, tried: number): string =>
  `From before, to hold the others against: ${
    tried === 1
      ? "the one recipe tried so far"
      : `best of the ${tried} recipes tried with a chance of ${percent(best)}`
  }.`;

/** Why the target is poured. */
export const WHY_TARGET = "The target: what all others are held against.";

interface Glass {
  readonly ids: readonly string[];
  readonly shares: readonly number[];
  /** Shares of the anchor, null where there is none. */
  readonly anchor: readonly number[] | null;
  /** Chance of being better than the anchor. */
  readonly better: number;
  /** Tried before. */
  readonly again: boolean;
  /** Whiskeys that stood in something tried. */
  readonly told: ReadonlySet<string>;
}

/** So small a share moved is not named. */
const NAMED = 0.02;

/**
 * Why a glass stands in the flight, in a sentence: what it has more of and less of than the anchor, and how likely that is better.
 *
 * @example whyGlass({ ids, shares: [0.5, 0.5], anchor: [1, 0], better: 0.4, again: false, told })
 */
export function whyGlass({ ids, shares, anchor, better, again, told }: Glass): string {
  const fresh = ids.filter((id, i) => (shares[i] as number) > 0 && !told.has(id));
  if (anchor === null) {
    const used = ids.filter((_, i) => (shares[i] as number) > 0);
    return used.length === 1
      ? `To find out how ${used[0]} is liked alone; nothing has been tried yet.`
      : `To find out how ${list(used)} are liked together; nothing has been tried yet.`;
  }
  const moved = ids
    .map((id, i) => ({ id, by: (shares[i] as number) - (anchor[i] as number) }))
    .filter(({ by }) => Math.abs(by) > NAMED)
    .toSorted((a, b) => Math.abs(b.by) - Math.abs(a.by));
  const more = moved.filter(({ by }) => by > 0).map(({ id }) => id);
  const less = moved.filter(({ by }) => by < 0).map(({ id }) => id);
  const change = [
    ...(more.length > 0 ? [`more ${list(more.slice(0, 2))}`] : []),
    ...(less.length > 0 ? [`less ${list(less.slice(0, 2))}`] : []),
  ].join(" and ");
  const chance = `better than the first glass with a chance of ${percent(better)}`;
  if (again) return `Poured before and still in the running: ${chance}.`;
  const news =
    fresh.length > 0 ? `; ${list(fresh)} ${fresh.length === 1 ? "has" : "have"} not been tried yet` : "";
  const asked =
    change === ""
      ? "a small change helps"
      : `${change} ${more.length > 0 && less.length === 0 && more.length === 1 ? "helps" : "help"}`;
  return `To find out whether ${asked}: ${chance}${news}.`;
}

function percent(share: number): string {
  return `${(100 * Math.min(0.99, Math.max(0.01, share))).toFixed(0)} %`;
}

function list(names: readonly string[]): string {
  return names.length < 2 ? (names[0] ?? "") : `${names.slice(0, -1).join(", ")} and ${names.at(-1) ?? ""}`;
}
