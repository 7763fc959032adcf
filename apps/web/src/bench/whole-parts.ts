/** Amounts as small whole parts. */
export interface WholeParts {
  readonly parts: readonly number[];
  /** The largest difference of a part's share from the amount's share, 0 to 1. */
  readonly off: number;
}

/** A share this near is as good as right: a part in a hundred. */
const NEAR = 0.01;
const MOST = 12;

/**
 * The smallest whole parts whose shares come within one part in a hundred of the amounts'; with none of at most 12 in all, the
 * nearest. An amount above 0 keeps at least one part.
 */
export function wholeParts(amounts: readonly number[]): WholeParts {
  const all = amounts.reduce((sum, amount) => sum + amount, 0);
  if (!(all > 0)) return { parts: amounts.map(() => 0), off: 0 };
  let best: WholeParts | null = null;
  for (let whole = 1; whole <= MOST; whole++) {
    const parts = amounts.map((amount) => (amount > 0 ? Math.max(1, Math.round((amount / all) * whole)) : 0));
    const sum = parts.reduce((total, part) => total + part, 0);
    const off = Math.max(...parts.map((part, i) => Math.abs(part / sum - (amounts[i] ?? 0) / all)));
    if (best === null || off < best.off - 1e-9) best = { parts, off };
    if (off <= NEAR) break;
  }
  return best ?? { parts: amounts.map(() => 0), off: 0 };
}
