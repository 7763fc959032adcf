/** Calls `visit` with every way to give each of `size` lines at least one part, at most `most` in all. The list is used again. */
export function eachParts(
  size: number,
  most: number,
  visit: (parts: readonly number[], sum: number) => void,
): void {
  const parts: number[] = [];
  const next = (sum: number): void => {
    if (parts.length === size) {
      visit(parts, sum);
      return;
    }
    const others = size - parts.length - 1;
    for (let own = 1; sum + own + others <= most; own += 1) {
      parts.push(own);
      next(sum + own);
      parts.pop();
    }
  };
  next(0);
}
