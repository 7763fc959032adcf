// oxlint-disable-next-line import/no-unassigned-import -- it tells zod something before any schema is made
import "../../no-eval.ts";
import { follow, type LiveMessage, type LiveState, Refusal } from "@partsproof/house/protocol";
import { useEffect, useRef, useState } from "react";
import { foldLive } from "./live-fold.ts";

export interface Live {
  /** How the table stands; null until the first message. */
  readonly table: LiveState | null;
  /** Whether the stream stands. */
  readonly on: boolean;
}

/** Milliseconds before the stream is sought again after the first, second, … loss. */
const WAITS = [500, 1000, 2000, 4000, 8000];
const pause = (ms: number, signal: AbortSignal): Promise<void> =>
  new Promise((done) => {
    const timer = setTimeout(done, ms);
    signal.addEventListener("abort", () => {
      clearTimeout(timer);
      done();
    });
  });

/**
 * Follows what happens at a table for as long as the page stands, and goes on after the last message when the network comes
 * back. `onMessage` is told of each message once.
 */
export function useLive(
  at: { readonly household: string; readonly flight: string },
  token: string | undefined,
  onMessage: (message: LiveMessage) => void = () => undefined,
): Live {
  const [table, setTable] = useState<LiveState | null>(null);
  const [on, setOn] = useState(false);
  const latest = useRef(onMessage);
  useEffect(() => {
    latest.current = onMessage;
  });
  const { household, flight } = at;
  useEffect(() => {
    const stop = new AbortController();
    const { signal } = stop;
    const run = async (): Promise<void> => {
      let after: number | undefined;
      let losses = 0;
      while (!signal.aborted) {
        const call = {
          at: { household, flight },
          signal,
          ...(token === undefined ? {} : { token }),
          ...(after === undefined ? {} : { after }),
        };
        try {
          // oxlint-disable-next-line no-await-in-loop -- one message after the other
          for await (const message of follow((request) => fetch(request), location.origin, call)) {
            losses = 0;
            after = message.seq;
            setOn(true);
            setTable((before) => foldLive(before, message));
            latest.current(message);
          }
        } catch (error) {
          // Shut out: the page says so by what it asks itself.
          if (error instanceof Refusal && error.status < 500 && error.status !== 429) return;
        }
        if (signal.aborted) return;
        setOn(false);
        // oxlint-disable-next-line no-await-in-loop -- waits before the next try
        await pause(WAITS[Math.min(losses, WAITS.length - 1)] ?? 8000, signal);
        losses += 1;
      }
    };
    void run();
    return () => stop.abort();
  }, [household, flight, token]);
  return { table, on };
}
