/** Taps on four glasses: at most two are in hand; a third tap lets the older go, a tap on one in hand puts it down. */
export function withPick(picked: readonly string[], code: string): readonly string[] {
  if (picked.includes(code)) return picked.filter((one) => one !== code);
  return [...picked, code].slice(-2);
}

/** The group in hand and, once it is whole, the rest as the other. */
export function groupsOf(
  codes: readonly string[],
  picked: readonly string[],
): readonly [readonly string[], readonly string[]] {
  const first = codes.filter((code) => picked.includes(code));
  return [first, first.length === 2 ? codes.filter((code) => !picked.includes(code)) : []];
}
