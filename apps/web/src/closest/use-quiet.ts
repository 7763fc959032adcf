import { startTransition, useEffect, useState } from "react";

/**
 * A value as it was when `moving` last stood still for so long: what is large on a page follows once a control rests, so that what
 * matters follows at once. While `moving` rests, the newest value that is `ready`.
 */
export function useQuiet<T>(value: T, moving: unknown, ms: number, ready: boolean): T {
  const [held, setHeld] = useState(value);
  const [rested, setRested] = useState(moving);
  useEffect(() => {
    const timer = setTimeout(() => startTransition(() => setRested(moving)), ms);
    return () => clearTimeout(timer);
  }, [moving, ms]);
  const rests = Object.is(rested, moving);
  useEffect(() => {
    if (rests && ready) startTransition(() => setHeld(value));
  }, [rests, ready, value]);
  return held;
}
