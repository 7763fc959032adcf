/** Every subset of so many items, in the order of the items. */
export function* subsetsOf<T>(
  items: readonly T[],
  size: number,
  from = 0,
): Generator<readonly T[], void, void> {
  if (size === 0) {
    yield [];
    return;
  }
  for (let at = from; at + size <= items.length; at += 1)
    for (const rest of subsetsOf(items, size - 1, at + 1)) yield [items[at]!, ...rest];
}
