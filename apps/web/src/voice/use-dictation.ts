import { useCallback, useEffect, useRef, useState } from "react";
import {
  failureWords,
  type HeardEvent,
  type HearingFailed,
  type Recognition,
  recognitionOf,
} from "./recognition.ts";

export interface Dictation {
  readonly listening: boolean;
  /** What is being said and may still be heard otherwise. */
  readonly sofar: string;
  /** Why it ended, if it did not end well. */
  readonly failed: string | null;
  readonly start: () => void;
  readonly stop: () => void;
}

/** Listens until stopped, and hands over each piece once it is heard for good. */
export function useDictation(onHeard: (text: string) => void): Dictation {
  const [listening, setListening] = useState(false);
  const [sofar, setSofar] = useState("");
  const [failed, setFailed] = useState<string | null>(null);
  const ear = useRef<Recognition | null>(null);
  const heard = useRef(onHeard);
  useEffect(() => {
    heard.current = onHeard;
  });
  useEffect(() => () => ear.current?.stop(), []);
  const start = useCallback((): void => {
    const Ear = recognitionOf();
    if (Ear === undefined || ear.current !== null) return;
    const now = new Ear();
    now.lang = document.documentElement.lang.startsWith(navigator.language.slice(0, 2))
      ? document.documentElement.lang
      : navigator.language;
    now.continuous = true;
    now.interimResults = true;
    now.addEventListener("result", (event) => {
      const { results, resultIndex } = event as HeardEvent;
      let open = "";
      for (let i = resultIndex; i < results.length; i += 1) {
        const result = results[i];
        const text = result?.[0]?.transcript ?? "";
        if (result?.isFinal === true) heard.current(text);
        else open += text;
      }
      setSofar(open);
    });
    now.addEventListener("error", (event) => setFailed(failureWords((event as HearingFailed).error)));
    now.addEventListener("end", () => {
      ear.current = null;
      setListening(false);
      setSofar("");
    });
    ear.current = now;
    setFailed(null);
    setListening(true);
    try {
      now.start();
    } catch (error) {
      ear.current = null;
      setListening(false);
      setFailed(`The browser could not listen (${error instanceof Error ? error.name : "no reason given"}).`);
    }
  }, []);
  const stop = useCallback((): void => ear.current?.stop(), []);
  return { listening, sofar, failed, start, stop };
}
