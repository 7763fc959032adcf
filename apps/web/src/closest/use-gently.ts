import { startTransition, useCallback, useEffect, useRef, useState } from "react";

export interface Gently<S> {
  readonly state: S;
  /** At once, as a typed field needs it. */
  readonly set: (change: (state: S) => S) => void;
  /** When the page gets to it: changes gather while one is being drawn, and none is drawn in a piece too long to answer in. */
  readonly setGently: (change: (state: S) => S) => void;
}

/**
 * State whose changes may be drawn bit by bit. One at a time is: a transition that each new change began anew would never end while a
 * finger drags.
 */
export function useGently<S>(first: S | (() => S)): Gently<S> {
  const [state, setState] = useState(first);
  const newest = useRef(state);
  const drawing = useRef(false);
  const draw = useCallback((): void => {
    drawing.current = true;
    startTransition(() => setState(newest.current));
  }, []);
  useEffect(() => {
    drawing.current = false;
    if (!Object.is(newest.current, state)) draw();
  }, [state, draw]);
  const set = useCallback((change: (state: S) => S): void => {
    newest.current = change(newest.current);
    setState(newest.current);
  }, []);
  const setGently = useCallback(
    (change: (state: S) => S): void => {
      const next = change(newest.current);
      if (Object.is(next, newest.current)) return;
      newest.current = next;
      // In a task of its own, after the one that moved the control.
      if (!drawing.current) setTimeout(() => !drawing.current && draw(), 0);
    },
    [draw],
  );
  return { state, set, setGently };
}
