import type { Problem } from "@partsproof/core/blending";
import { startTransition, useCallback, useEffect, useMemo, useRef, useState } from "react";
import type { Found, FromSearch, Told, ToSearch } from "./messages.ts";

/** So many recipes are sought. */
export const TOP = 20;

export interface Seeking {
  /** The closest that is known, perhaps of the question before; null before anything is. */
  readonly told: Told | null;
  /** The whole list, which follows `told` once nothing new is asked for a while. */
  readonly found: Found | null;
  /** Whether `told` answers what is asked now. */
  readonly current: boolean;
  /** Whether `found` does. */
  readonly listed: boolean;
  readonly state: "nothing asked" | "searching" | "done" | "stopped" | "broken";
  readonly stop: () => void;
  readonly goOn: () => void;
  /** Asks at once, before the page has drawn whatever asks it. */
  readonly seek: (problem: Problem | null) => void;
  /**
   * Asks what is answered already, and shows no more of it than its end, which looks the same: what answers a control that moves has then
   * run once, and is not compiled under a finger.
   */
  readonly rehearse: (problem: Problem) => void;
}

/**
 * Searches in a worker whenever the problem changes. One question is on its way at a time: while a control moves, the newest
 * problem waits until the one before has said its first word, so that something is always shown.
 */
export function useSearch(problem: Problem | null): Seeking {
  const worker = useRef<Worker | null>(null);
  const turn = useRef(0);
  const unheard = useRef(false);
  const wished = useRef<Problem | null>(null);
  const waiting = useRef<Problem | null>(null);
  const sent = useRef<Problem["whiskeys"] | null>(null);
  const rehearsal = useRef(0);
  const [turns] = useState(() => new WeakMap<Problem, number>());
  const [told, setTold] = useState<Told | null>(null);
  const [found, setFound] = useState<Found | null>(null);
  const [stoppedAt, setStoppedAt] = useState<Problem | null>(null);
  const [broken, setBroken] = useState(false);

  const ask = useCallback(
    (next: Problem): void => {
      turn.current += 1;
      turns.set(next, turn.current);
      unheard.current = true;
      waiting.current = null;
      const { whiskeys, ...problem } = next;
      const message: ToSearch = {
        kind: "search",
        turn: turn.current,
        problem,
        // The shelf is large and mostly the same: it goes over once.
        whiskeys: whiskeys === sent.current ? null : whiskeys,
        top: TOP,
      };
      sent.current = whiskeys;
      worker.current?.postMessage(message);
      setBroken(false);
    },
    [turns],
  );

  useEffect(() => {
    const own = new Worker(new URL("./search.worker.ts", import.meta.url), { type: "module" });
    worker.current = own;
    wished.current = null;
    waiting.current = null;
    sent.current = null;
    unheard.current = false;
    own.addEventListener("message", ({ data }: MessageEvent<FromSearch>) => {
      if (data.kind === "found") {
        // Large: drawn bit by bit.
        startTransition(() => setFound(data.found));
        return;
      }
      if (data.told.turn === turn.current) unheard.current = false;
      if (data.told.done || data.told.turn !== rehearsal.current) setTold(data.told);
      if (!unheard.current && waiting.current !== null) ask(waiting.current);
    });
    own.addEventListener("error", () => {
      unheard.current = false;
      setBroken(true);
    });
    return () => {
      own.terminate();
      worker.current = null;
    };
  }, [ask]);

  const seek = useCallback(
    (next: Problem | null): void => {
      wished.current = next;
      if (next === null) {
        waiting.current = null;
        worker.current?.postMessage({ kind: "stop" } satisfies ToSearch);
      } else if (unheard.current) waiting.current = next;
      else ask(next);
    },
    [ask],
  );
  useEffect(() => {
    if (problem === null || problem !== wished.current) seek(problem);
  }, [problem, seek]);
  const rehearse = useCallback(
    (same: Problem): void => {
      if (unheard.current) return;
      rehearsal.current = turn.current + 1;
      ask(same);
    },
    [ask],
  );

  const stop = useCallback((): void => {
    worker.current?.postMessage({ kind: "stop" } satisfies ToSearch);
    setStoppedAt(problem);
  }, [problem]);
  const goOn = useCallback((): void => {
    setStoppedAt(null);
    if (problem !== null) ask(problem);
  }, [problem, ask]);

  // While a control moves, an answer may be to something newer than what the page has drawn.
  const sought =
    problem === null ? Number.POSITIVE_INFINITY : (turns.get(problem) ?? Number.POSITIVE_INFINITY);
  const current = told !== null && told.turn >= sought;
  const listed = found !== null && found.turn >= sought;
  let state: Seeking["state"] = "searching";
  if (problem === null) state = "nothing asked";
  else if (current && told.done) state = "done";
  else if (stoppedAt === problem) state = "stopped";
  else if (broken) state = "broken";
  return useMemo(
    () => ({ told, found, current, listed, state, stop, goOn, seek, rehearse }),
    [told, found, current, listed, state, stop, goOn, seek, rehearse],
  );
}
