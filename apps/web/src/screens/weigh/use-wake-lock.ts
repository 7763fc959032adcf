import { useEffect, useState } from "react";

/**
 * Keeps the screen on while it is shown, where the browser can. "on": it does; "off": it was refused (a low battery, say); "none": this
 * browser has no such thing.
 */
export function useWakeLock(): "on" | "off" | "none" {
  const [state, setState] = useState<"on" | "off" | "none">("wakeLock" in navigator ? "off" : "none");
  useEffect(() => {
    if (!("wakeLock" in navigator)) return undefined;
    let lock: WakeLockSentinel | null = null;
    let gone = false;
    const hold = async (): Promise<void> => {
      if (document.visibilityState !== "visible" || (lock !== null && !lock.released)) return;
      try {
        const held = await navigator.wakeLock.request("screen");
        if (gone) {
          await held.release();
          return;
        }
        lock = held;
        setState("on");
        held.addEventListener("release", () => setState("off"));
      } catch {
        setState("off");
      }
    };
    const again = (): void => void hold();
    again();
    // The browser lets go whenever the page is hidden.
    document.addEventListener("visibilitychange", again);
    return () => {
      gone = true;
      document.removeEventListener("visibilitychange", again);
      void lock?.release();
    };
  }, []);
  return state;
}
