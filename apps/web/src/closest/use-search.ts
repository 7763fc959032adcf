import type { Problem } from "@partsproof/core/blending";
import { useCallback, useEffect, useMemo, useRef, useState } from "react";
import type { Found, ToSearch } from "./messages.ts";
import { useGently } from "./use-gently.ts";

/** So many recipes are sought. */
export const TOP = 20;

export interface Seeking {
  /** The newest that is known, perhaps of the question before; null before anything is. */
  readonly found: Found | null;
  /** Whether `found` answers what is asked now. */
  readonly current: boolean;
  readonly state: "nothing asked" | "searching" | "done" | "stopped" | "broken";
  readonly stop: () => void;
  readonly goOn: () => void;
}

/**
 * Searches in a worker whenever the problem changes. One question is on its way at a time: while a control moves, the newest
 * problem waits until the one before has said its first word, so that something is always shown.
 */
export function useSearch(problem: Problem | null): Seeking {
  const worker = useRef<Worker | null>(null);
  const turn = useRef(0);
  const unheard = useRef(false);
  const waiting = useRef<Problem | null>(null);
  const sent = useRef<Problem["whiskeys"] | null>(null);
  const { state: found, setGently: setFound } = useGently<Found | null>(null);
  const [stoppedAt, setStoppedAt] = useState<Problem | null>(null);
  const [broken, setBroken] = useState(false);
  const [askedOf, setAskedOf] = useState<{ readonly turn: number; readonly problem: Problem } | null>(null);

  const ask = useCallback((next: Problem): void => {
    turn.current += 1;
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
    setAskedOf({ turn: turn.current, problem: next });
  }, []);

  useEffect(() => {
    const own = new Worker(new URL("./search.worker.ts", import.meta.url), { type: "module" });
    worker.current = own;
    sent.current = null;
    unheard.current = false;
    own.addEventListener("message", ({ data }: MessageEvent<Found>) => {
      if (data.turn === turn.current) unheard.current = false;
      setFound(() => data);
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
  }, [ask, setFound]);

  useEffect(() => {
    if (problem === null) {
      waiting.current = null;
      worker.current?.postMessage({ kind: "stop" } satisfies ToSearch);
    } else if (unheard.current) waiting.current = problem;
    else ask(problem);
  }, [problem, ask]);

  const stop = useCallback((): void => {
    worker.current?.postMessage({ kind: "stop" } satisfies ToSearch);
    setStoppedAt(problem);
  }, [problem]);
  const goOn = useCallback((): void => {
    setStoppedAt(null);
    if (problem !== null) ask(problem);
  }, [problem, ask]);

  const current =
    found !== null && problem !== null && askedOf?.problem === problem && found.turn === askedOf.turn;
  let state: Seeking["state"] = "searching";
  if (problem === null) state = "nothing asked";
  else if (current && found.done) state = "done";
  else if (stoppedAt === problem) state = "stopped";
  else if (broken) state = "broken";
  return useMemo(() => ({ found, current, state, stop, goOn }), [found, current, state, stop, goOn]);
}
