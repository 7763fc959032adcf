import type { NextThing } from "@partsproof/house/protocol";
import { useEffect, useState } from "react";
import { keep, kept, useNow } from "../session/index.ts";
import { dueNow, keyOf } from "./due-now.ts";

const SAID = "reminded";
/** So many are remembered as said. */
const MOST = 200;

/** Whether this device reminds: `ask` may be tapped, `on`, `off` where the browser was told no, `none` where it cannot. */
export type Reminding = "ask" | "on" | "off" | "none";

function standing(): Reminding {
  if (typeof Notification === "undefined") return "none";
  if (Notification.permission === "granted") return "on";
  return Notification.permission === "denied" ? "off" : "ask";
}

const saidBefore = (): readonly string[] => {
  try {
    const read: unknown = JSON.parse(kept(SAID) ?? "[]");
    return Array.isArray(read) ? read.map(String) : [];
  } catch {
    return [];
  }
};

/** Says what is due, where that was allowed; `ask` asks the browser, and only a tap may call it. */
export function useReminders(things: readonly NextThing[] | undefined): {
  readonly state: Reminding;
  readonly ask: () => Promise<void>;
} {
  const now = useNow();
  const [state, setState] = useState(standing);
  useEffect(() => {
    if (state !== "on" || things === undefined) return;
    const said = saidBefore();
    const due = dueNow(things, new Set(said), now);
    if (due.length === 0) return;
    keep(SAID, JSON.stringify([...said, ...due.map(keyOf)].slice(-MOST)));
    for (const thing of due) void tell(thing.text, keyOf(thing));
  }, [things, now, state]);
  return {
    state,
    ask: async () => {
      await Notification.requestPermission();
      setState(standing());
    },
  };
}

/** On a phone only the kept app's worker may; elsewhere the page itself. */
async function tell(words: string, tag: string): Promise<void> {
  const worker = await navigator.serviceWorker?.getRegistration().catch(() => undefined);
  try {
    // A notification shows itself as it is made.
    if (worker === undefined) void new Notification("Parts & Proof", { body: words, tag });
    else await worker.showNotification("Parts & Proof", { body: words, tag });
  } catch {
    // The list on the page says the same.
  }
}
