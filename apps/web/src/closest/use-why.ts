import { useCallback, useEffect, useRef, useState } from "react";
import type { Because, Why, Wish } from "./messages.ts";

export interface Wondering {
  readonly wish: Wish | null;
  readonly because: Because | null;
  readonly state: "nothing asked" | "working" | "answered" | "broken";
  readonly ask: (wish: Wish) => void;
  /** Ends the worker, and forgets what was asked. */
  readonly end: () => void;
}

interface Asked {
  readonly wish: Wish | null;
  readonly because: Because | null;
  readonly broken: boolean;
}
const NOTHING: Asked = { wish: null, because: null, broken: false };

/**
 * Asks one slow question at a time, each in a worker of its own that is ended when the question is dropped. A wish stands until it
 * is ended: when `about`, the search that is asked of, changes, it is asked of the new one, and no answer stands beside a search
 * that it is not about.
 */
export function useWhy(about: (wish: Wish) => Why): Wondering {
  const worker = useRef<Worker | null>(null);
  const standing = useRef<Wish | null>(null);
  const [asked, setAsked] = useState(NOTHING);
  const settle = useCallback((next: Asked): void => {
    worker.current?.terminate();
    worker.current = null;
    standing.current = next.wish;
    setAsked(next);
  }, []);
  const end = useCallback((): void => settle(NOTHING), [settle]);
  const ask = useCallback(
    (wish: Wish): void => {
      settle({ wish, because: null, broken: false });
      const own = new Worker(new URL("./why.worker.ts", import.meta.url), { type: "module" });
      worker.current = own;
      own.addEventListener("message", ({ data }: MessageEvent<Because>) =>
        settle({ wish, because: data, broken: false }),
      );
      own.addEventListener("error", () => settle({ wish, because: null, broken: true }));
      // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a worker's takes no origin
      own.postMessage(about(wish));
    },
    [about, settle],
  );
  useEffect(() => {
    if (standing.current !== null) ask(standing.current);
  }, [ask]);
  useEffect(() => () => worker.current?.terminate(), []);
  let state: Wondering["state"] = "working";
  if (asked.wish === null) state = "nothing asked";
  else if (asked.because !== null) state = "answered";
  else if (asked.broken) state = "broken";
  return { wish: asked.wish, because: asked.because, state, ask, end };
}
