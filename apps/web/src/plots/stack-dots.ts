export interface StackedDot<T> {
  readonly item: T;
  readonly value: number;
  /** 0 on the line, then 1, -1, 2, -2, …: how many dots it stands above or below it. */
  readonly step: number;
}

/** Dots with the same value stand apart, so that none hides another; the first stands on the line. */
export function stackDots<T>(items: readonly T[], valueOf: (item: T) => number): readonly StackedDot<T>[] {
  const seen = new Map<number, number>();
  return items.map((item) => {
    const value = valueOf(item);
    const before = seen.get(value) ?? 0;
    seen.set(value, before + 1);
    const away = Math.ceil(before / 2);
    return { item, value, step: before % 2 === 1 ? away : -away + 0 };
  });
}

/** The largest distance from the line, in dots. */
export function tallest(dots: readonly { readonly step: number }[]): number {
  return dots.reduce((most, { step }) => Math.max(most, Math.abs(step)), 0);
}
