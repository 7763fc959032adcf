/** Pairs found: places in the level, and the cosine in what is left of M. */
export class PairsFound {
  size = 0;
  x = new Int32Array(64);
  y = new Int32Array(64);
  cosine = new Float64Array(64);

  put(x: number, y: number, cosine: number): void {
    if (this.size === this.x.length) {
      const { x: oldX, y: oldY, cosine: old } = this;
      this.x = new Int32Array(2 * this.size);
      this.y = new Int32Array(2 * this.size);
      this.cosine = new Float64Array(2 * this.size);
      this.x.set(oldX);
      this.y.set(oldY);
      this.cosine.set(old);
    }
    this.x[this.size] = x;
    this.y[this.size] = y;
    this.cosine[this.size] = cosine;
    this.size += 1;
  }

  /** Their turns, the most opposed first; equal ones as they were found. */
  order(): Int32Array {
    return Int32Array.from({ length: this.size }, (_, at) => at).toSorted(
      (a, b) => this.cosine[a]! - this.cosine[b]! || a - b,
    );
  }
}
