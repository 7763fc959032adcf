import type { LiveMessage } from "@partsproof/house/protocol";

/** How many glasses are open on this page, and the count of its own that the table has not told back yet. */
export interface Opened {
  readonly open: number;
  readonly awaited: number | null;
}

/**
 * What is open after a message of the table. Until the count that this page sent last is told back, what is told is older
 * than what its person did, and changes nothing.
 */
export function foldOpened(here: Opened, message: LiveMessage): Opened {
  const { open, awaited } = here;
  if (message.kind === "state") {
    const told = awaited !== null && message.opened >= awaited;
    return { open: Math.max(open, message.opened), awaited: told ? null : awaited };
  }
  if (message.what !== "glass opened") return here;
  const count = message.number ?? 0;
  if (awaited === null) return { open: count, awaited };
  return awaited === count ? { open, awaited: null } : here;
}
