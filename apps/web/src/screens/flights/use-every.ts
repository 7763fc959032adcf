import { useEffect, useRef } from "react";

/** Does `act` every so many milliseconds while `on` and the page is in sight; also at once when it comes back in sight. */
export function useEvery(ms: number, act: () => void, on: boolean): void {
  const latest = useRef(act);
  useEffect(() => {
    latest.current = act;
  });
  useEffect(() => {
    if (!on) return undefined;
    const tick = (): void => {
      if (document.visibilityState === "visible") latest.current();
    };
    const timer = setInterval(tick, ms);
    document.addEventListener("visibilitychange", tick);
    return () => {
      clearInterval(timer);
      document.removeEventListener("visibilitychange", tick);
    };
  }, [ms, on]);
}
