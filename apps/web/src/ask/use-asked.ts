import type { Refusal } from "@partsproof/house/protocol";
import { useCallback, useEffect, useState } from "react";
import { answerKept, keepAnswer, onWritten } from "./answers.ts";
import { asRefusal } from "./client.ts";

interface Always {
  /** Asks again. */
  readonly again: () => void;
}

/**
 * What became of a question. `here` may carry a `refusal` too: the answer is then the last good one, and asking again
 * failed.
 */
export type Asked<T> = Always &
  (
    | { readonly state: "busy"; readonly answer: undefined; readonly refusal: null }
    | { readonly state: "broken"; readonly answer: undefined; readonly refusal: Refusal }
    | { readonly state: "here"; readonly answer: T; readonly refusal: Refusal | null }
  );

interface Got {
  readonly key: string;
  readonly refusal: Refusal | null;
}

/** Asks `ask` under `key` now, after every write and on `again`; a null key does not ask and stays busy. */
export function useAsked<T>(key: string | null, ask: (signal: AbortSignal) => Promise<T>): Asked<T> {
  const [got, setGot] = useState<Got | null>(null);
  const [turn, setTurn] = useState(0);
  const again = useCallback(() => setTurn((n) => n + 1), []);

  useEffect(() => {
    if (key === null) return undefined;
    const stop = new AbortController();
    ask(stop.signal).then(
      (answer) => {
        if (stop.signal.aborted) return;
        keepAnswer(key, answer);
        setGot({ key, refusal: null });
      },
      (error: unknown) => {
        if (!stop.signal.aborted) setGot({ key, refusal: asRefusal(error) });
      },
    );
    return () => stop.abort();
    // `ask` is told by `key`: the same key asks the same thing.
    // oxlint-disable-next-line react/exhaustive-deps
  }, [key, turn]);

  useEffect(() => onWritten(again), [again]);

  const answer = key === null ? undefined : (answerKept(key) as T | undefined);
  const refusal = got !== null && got.key === key ? got.refusal : null;
  if (answer !== undefined) return { state: "here", answer, refusal, again };
  if (refusal !== null) return { state: "broken", answer: undefined, refusal, again };
  return { state: "busy", answer: undefined, refusal: null, again };
}
