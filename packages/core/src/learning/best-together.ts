/** Which glasses what is left on the shelf allows, one after the other. */
export interface Allowance {
  readonly allows: (at: number) => boolean;
  readonly take: (at: number) => void;
  /** Told of what would have been chosen, had there been enough. */
  readonly missed: (at: number) => void;
}

/**
 * Glass by glass what adds most to the expected best of a flight; and what all of them add to the anchor alone.
 *
 * @param draws log worths, one row a draw
 * @param anchor the glass that stands first; undefined: held against the middle of all, worth 0 beforehand
 * @param open those that may be chosen
 * @param shelf what was taken for the anchor is off it already; where left out, there is enough of everything
 * @example bestTogether(draws, 0, [1, 2, 3], 3).chosen // [0, 2, 1]
 */
export function bestTogether(
  draws: readonly Float64Array[],
  anchor: number | undefined,
  open: readonly number[],
  glasses: number,
  shelf?: Allowance,
): { readonly chosen: readonly number[]; readonly gain: number } {
  const chosen = anchor === undefined ? [] : [anchor];
  // Without an anchor a glass is held against an unknown mix, worth 0.
  const top = Float64Array.from(draws, (draw) => (anchor === undefined ? 0 : (draw[anchor] as number)));
  const left = new Set(open);
  let gain = 0;
  while (chosen.length < glasses && left.size > 0) {
    const missed: { readonly at: number; readonly added: number }[] = [];
    let best: { readonly at: number; readonly added: number } | undefined;
    for (const at of left) {
      let added = 0;
      for (let d = 0; d < draws.length; d += 1)
        added += Math.max(0, ((draws[d] as Float64Array)[at] as number) - (top[d] as number));
      if (shelf?.allows(at) === false) {
        missed.push({ at, added });
        left.delete(at);
      } else if (best === undefined || added > best.added) best = { at, added };
    }
    for (const one of missed) if (best === undefined || one.added > best.added) shelf?.missed(one.at);
    if (best === undefined) break;
    const { at, added } = best;
    shelf?.take(at);
    chosen.push(at);
    left.delete(at);
    gain += added / draws.length;
    for (let d = 0; d < draws.length; d += 1)
      top[d] = Math.max(top[d] as number, (draws[d] as Float64Array)[at] as number);
  }
  return { chosen, gain };
}
