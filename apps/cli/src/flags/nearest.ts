/** Edits (insert, drop, replace, swap of neighbours) that lead from one word to the other; the restricted Damerau count. */
export function edits(a: string, b: string): number {
  let before: number[] = [];
  let above = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      let best = Math.min((row[j - 1] ?? 0) + 1, (above[j] ?? 0) + 1, (above[j - 1] ?? 0) + same);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        best = Math.min(best, (before[j - 2] ?? 0) + 1);
      }
      row.push(best);
    }
    before = above;
    above = row;
  }
  return above[b.length] ?? 0;
}

/** The word that takes the fewest edits, case aside; the first of several. Null only of an empty list. */
export function nearest(word: string, words: readonly string[]): string | null {
  let best: string | null = null;
  let fewest = Infinity;
  for (const candidate of words) {
    const count = edits(word.toLowerCase(), candidate.toLowerCase());
    if (count < fewest) [best, fewest] = [candidate, count];
  }
  return best;
}
