export interface Stacked {
  readonly top: number;
  readonly height: number;
}

/** Amounts as slices of `length`, one below the other from `from` on; heights are as the amounts. */
export function stackAmounts(amounts: readonly number[], from: number, length: number): readonly Stacked[] {
  const whole = amounts.reduce((sum, amount) => sum + amount, 0);
  let below = from;
  const slices: Stacked[] = [];
  for (const amount of amounts) {
    const height = whole > 0 ? (amount / whole) * length : 0;
    slices.push({ top: below, height });
    below += height;
  }
  return slices;
}
