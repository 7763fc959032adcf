import { useEffect, useState } from "react";

/**
 * A list that changes some entries at a time, from the first on, `many` every `ms`: no change of a long list is one long task. With
 * other keys it is another list, and there at once.
 */
export function useBySlices<T extends { readonly key: string }>(
  list: readonly T[],
  many: number,
  ms: number,
): readonly T[] {
  const [shown, setShown] = useState(list);
  useEffect(() => {
    let upTo = 0;
    const timer = setInterval(() => {
      upTo += many;
      const now = upTo;
      setShown((before) =>
        before === list || now >= list.length ? list : [...list.slice(0, now), ...before.slice(now)],
      );
      if (now >= list.length) clearInterval(timer);
    }, ms);
    return () => clearInterval(timer);
  }, [list, many, ms]);
  const alike = shown.length === list.length && shown.every(({ key }, n) => key === list[n]?.key);
  return alike ? shown : list;
}
