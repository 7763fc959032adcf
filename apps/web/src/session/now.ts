import { useSyncExternalStore } from "react";

const MINUTE_MS = 60_000;

function subscribe(listener: () => void): () => void {
  const timer = setInterval(listener, MINUTE_MS / 2);
  return () => clearInterval(timer);
}

const thisMinute = (): number => Math.floor(Date.now() / MINUTE_MS) * MINUTE_MS;

/** The present time to the minute; what is on screen follows it. */
export function useNow(): number {
  return useSyncExternalStore(subscribe, thisMinute);
}
