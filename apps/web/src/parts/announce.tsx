import { useSyncExternalStore } from "react";

let said = "";
const listeners = new Set<() => void>();

/** Says a short sentence to screen readers, after what they are saying now. */
export function announce(text: string): void {
  // The same sentence twice would not be heard the second time; a trailing space makes it new.
  said = text === said ? `${text}\u00a0` : text;
  for (const listener of listeners) listener();
}

const subscribe = (listener: () => void): (() => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};

/** The one live region of the app. */
export function Announcer() {
  const text = useSyncExternalStore(subscribe, () => said);
  return (
    <div className="unseen" role="status" aria-live="polite">
      {text}
    </div>
  );
}
