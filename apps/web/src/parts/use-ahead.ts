import { useEffect, useLayoutEffect, useRef } from "react";

/** A value that was given away and never comes back was refused: what stands is shown again. */
const BACK_BY_MS = 1000;

export interface Ahead {
  /** The newest value, given away or drawn. */
  readonly newest: () => number;
  /** `value` was given away: shown at once, and until it comes back. */
  readonly went: (value: number) => void;
}

/**
 * Lets a control run ahead of whoever holds its value: `show` is called at once for a value given away, and no older value that is
 * drawn meanwhile is shown in between. A page that takes long to draw then never holds a finger back.
 */
export function useAhead(value: number, show: (value: number) => void): Ahead {
  const ahead = useRef<number | null>(null);
  const drawn = useRef({ value, show });
  const late = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  useLayoutEffect(() => {
    drawn.current = { value, show };
    if (ahead.current === value) ahead.current = null;
    show(ahead.current ?? value);
  });
  useEffect(() => () => clearTimeout(late.current), []);
  return {
    newest: () => ahead.current ?? drawn.current.value,
    went: (next) => {
      ahead.current = next;
      show(next);
      clearTimeout(late.current);
      late.current = setTimeout(() => {
        ahead.current = null;
        drawn.current.show(drawn.current.value);
      }, BACK_BY_MS);
    },
  };
}
