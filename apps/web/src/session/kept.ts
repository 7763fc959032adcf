const PREFIX = "partsproof.";
const listeners = new Set<() => void>();
/** Where the browser refuses storage (a private window, say), things last as long as the page. */
const fallback = new Map<string, string>();

/** A value this device keeps, or null. */
export function kept(key: string): string | null {
  try {
    return localStorage.getItem(PREFIX + key) ?? fallback.get(key) ?? null;
  } catch {
    return fallback.get(key) ?? null;
  }
}

/** Keeps a value on this device; null forgets it. */
export function keep(key: string, value: string | null): void {
  if (value === null) fallback.delete(key);
  else fallback.set(key, value);
  try {
    if (value === null) localStorage.removeItem(PREFIX + key);
    else localStorage.setItem(PREFIX + key, value);
  } catch {
    // Kept in the fallback above.
  }
  for (const listener of listeners) listener();
}

/** Subscribes to changes, those made in another tab included. */
export function onKept(listener: () => void): () => void {
  listeners.add(listener);
  globalThis.addEventListener("storage", listener);
  return () => {
    listeners.delete(listener);
    globalThis.removeEventListener("storage", listener);
  };
}
