/**
 * Moves labels apart so that none overlap: each centre as near as possible above or below where it wants to be, in the
 * same order, within 0 to `length`. Where there is no room for all, they are spread evenly.
 */
export function spreadLabels(wanted: readonly number[], height: number, length: number): readonly number[] {
  const n = wanted.length;
  if (n === 0) return [];
  const room = length / n;
  if (room <= height) return wanted.map((_, i) => room * (i + 0.5));
  const centres: number[] = [];
  for (const [i, want] of wanted.entries()) {
    const least = i === 0 ? height / 2 : (centres[i - 1] ?? 0) + height;
    centres.push(Math.max(least, want));
  }
  let most = length - height / 2;
  for (let i = n - 1; i >= 0; i--) {
    centres[i] = Math.min(most, centres[i] ?? most);
    most = (centres[i] ?? most) - height;
  }
  return centres;
}
