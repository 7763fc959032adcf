import { startTransition, useCallback, useEffect, useRef, useState } from "react";

export interface Gently<S> {
  readonly state: S;
  /** At once, as a typed field needs it. */
  readonly set: (change: (state: S) => S) => void;
  /**
   * When the page gets to it: changes gather while one is being drawn, and none is drawn in a piece too long to answer in. Gives the
   * state as it will be.
   */
  readonly setGently: (change: (state: S) => S) => S;
}

/**
 * State whose changes may be drawn bit by bit. One at a time is: a transition that each new change began anew would never end while a
 * finger drags.
 *
 * @param restMs drawn only once nothing has changed for so long
 */
export function useGently<S>(first: S | (() => S), restMs: number): Gently<S> {
  const [state, setState] = useState(first);
  const newest = useRef(state);
  const drawing = useRef(false);
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const draw = useCallback((): void => {
    timer.current = undefined;
    if (drawing.current) return;
    drawing.current = true;
    startTransition(() => setState(newest.current));
  }, []);
  const drawSoon = useCallback((): void => {
    clearTimeout(timer.current);
    // In a task of its own, after the one that moved the control.
    timer.current = setTimeout(draw, restMs);
  }, [draw, restMs]);
  useEffect(() => {
    drawing.current = false;
    if (!Object.is(newest.current, state)) drawSoon();
  }, [state, drawSoon]);
  useEffect(() => () => clearTimeout(timer.current), []);
  const set = useCallback((change: (state: S) => S): void => {
    newest.current = change(newest.current);
    setState(newest.current);
  }, []);
  const setGently = useCallback(
    (change: (state: S) => S): S => {
      const next = change(newest.current);
      if (Object.is(next, newest.current)) return next;
      newest.current = next;
      drawSoon();
      return next;
    },
    [drawSoon],
  );
  return { state, set, setGently };
}
