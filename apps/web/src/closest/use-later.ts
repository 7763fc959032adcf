import { useEffect, useState } from "react";

/** A value so long after it came: large parts of a page that follow one change are each drawn in a task of their own. */
export function useLater<T>(value: T, ms: number): T {
  const [held, setHeld] = useState(value);
  useEffect(() => {
    const timer = setTimeout(() => setHeld(value), ms);
    return () => clearTimeout(timer);
  }, [value, ms]);
  return held;
}
