import { useCallback, useEffect, useRef, useState } from "react";
import type { Because, Why } from "./messages.ts";

export interface Wondering {
  readonly why: Why | null;
  readonly because: Because | null;
  readonly state: "nothing asked" | "working" | "answered" | "broken";
  readonly ask: (why: Why) => void;
  /** Ends the worker, and forgets what was asked. */
  readonly end: () => void;
}

interface Asked {
  readonly why: Why | null;
  readonly because: Because | null;
  readonly broken: boolean;
}
const NOTHING: Asked = { why: null, because: null, broken: false };

/** Asks one slow question at a time, each in a worker of its own that is ended when the question is dropped. */
export function useWhy(): Wondering {
  const worker = useRef<Worker | null>(null);
  const [asked, setAsked] = useState(NOTHING);
  const end = useCallback((): void => {
    worker.current?.terminate();
    worker.current = null;
    setAsked(NOTHING);
  }, []);
  const ask = useCallback((why: Why): void => {
    worker.current?.terminate();
    const own = new Worker(new URL("./why.worker.ts", import.meta.url), { type: "module" });
    worker.current = own;
    setAsked({ why, because: null, broken: false });
    own.addEventListener("message", ({ data }: MessageEvent<Because>) => {
      own.terminate();
      setAsked({ why, because: data, broken: false });
    });
    own.addEventListener("error", () => {
      own.terminate();
      setAsked({ why, because: null, broken: true });
    });
    // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a worker's takes no origin
    own.postMessage(why);
  }, []);
  useEffect(() => () => worker.current?.terminate(), []);
  let state: Wondering["state"] = "working";
  if (asked.why === null) state = "nothing asked";
  else if (asked.because !== null) state = "answered";
  else if (asked.broken) state = "broken";
  return { why: asked.why, because: asked.because, state, ask, end };
}
