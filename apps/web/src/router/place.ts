import { useSyncExternalStore } from "react";

/** What asks before leaving: returns true to stay. Used by a form with unsaved changes. */
type Holder = () => boolean;

const listeners = new Set<() => void>();
const holders = new Set<Holder>();

let moved = false;

const here = (): string => location.pathname + location.search;

/** Whether the reader has gone anywhere since the page was loaded; only then does a new screen take the focus. */
export function hasMoved(): boolean {
  return moved;
}

function tell(): void {
  moved = true;
  for (const listener of listeners) listener();
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener);
  globalThis.addEventListener("popstate", tell);
  return () => {
    listeners.delete(listener);
    if (listeners.size === 0) globalThis.removeEventListener("popstate", tell);
  };
}

/** Goes to an address of the app. `replace` leaves no step back to the present one. */
export function go(to: string, how: { readonly replace?: boolean } = {}): void {
  for (const holder of holders) if (holder()) return;
  if (how.replace === true) history.replaceState(null, "", to);
  else history.pushState(null, "", to);
  if (how.replace !== true) scrollTo(0, 0);
  tell();
}

/** Asks `holder` before every `go`; call the answer to stop. */
export function holdLeaving(holder: Holder): () => void {
  holders.add(holder);
  return () => void holders.delete(holder);
}

/** Path and query of the present address. */
export function usePlace(): { readonly path: string; readonly query: URLSearchParams } {
  const place = useSyncExternalStore(subscribe, here);
  const [path = "/", query = ""] = place.split("?", 2);
  return { path, query: new URLSearchParams(query) };
}
