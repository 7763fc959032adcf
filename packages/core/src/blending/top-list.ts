/** One recipe of a list: whiskeys by place on the problem's shelf in ascending order, and their parts. */
export type Entry = {
  readonly support: readonly number[];
  readonly parts: readonly number[];
  readonly score: number;
  readonly distance: number;
  readonly predicted: readonly number[];
};

/** Scores closer than this tie: the sums behind them are not more exact. */
const TIE = 1e-11;

/** Lower score first; among ties fewer bottles, then fewer parts, then the earlier whiskeys, then more of the earlier. */
function compareEntries(a: Entry, b: Entry): number {
  const score = Math.round(a.score / TIE) - Math.round(b.score / TIE);
  if (score !== 0) return score;
  if (a.support.length !== b.support.length) return a.support.length - b.support.length;
  const total = ({ parts }: Entry): number => parts.reduce((sum, one) => sum + one, 0);
  if (total(a) !== total(b)) return total(a) - total(b);
  for (const [x, place] of a.support.entries()) if (place !== b.support[x]) return place - b.support[x]!;
  for (const [x, parts] of a.parts.entries()) if (parts !== b.parts[x]) return b.parts[x]! - parts;
  return 0;
}

/** The best `size` recipes seen so far, best first, each once. */
export class TopList {
  readonly entries: Entry[] = [];
  readonly size: number;

  constructor(size: number) {
    this.size = size;
  }

  /** What a recipe must not exceed to be worth offering. */
  get threshold(): number {
    return this.entries.length < this.size ? Infinity : this.entries.at(-1)!.score;
  }

  /** Whether a recipe of this score may have a place, unless it stands there already. */
  takes(score: number): boolean {
    return score <= this.threshold + TIE;
  }

  add(entry: Entry): void {
    if (!this.takes(entry.score)) return;
    let at = this.entries.length;
    while (at > 0 && compareEntries(entry, this.entries[at - 1]!) < 0) at -= 1;
    if (at > 0 && compareEntries(entry, this.entries[at - 1]!) === 0) return;
    this.entries.splice(at, 0, entry);
    if (this.entries.length > this.size) this.entries.pop();
  }
}
