import { useEffect, useState } from "react";
import { keep, kept } from "../../session/index.ts";
import { announce } from "../../parts/index.ts";
import { begun, readRest, type Rest, secondsLeft, writeRest } from "./rest-between.ts";

export interface Resting {
  readonly minutes: number;
  readonly left: number;
  readonly setMinutes: (minutes: number) => void;
  readonly begin: () => void;
  readonly end: () => void;
}

/** The rest between two glasses of a sheet: counted by the clock, kept on this phone, told in a word when it is over. */
export function useRest(sheetId: string): Resting {
  const key = `rest.${sheetId}`;
  const [rest, setRest] = useState<Rest>(() => readRest(kept(key)));
  const [now, setNow] = useState(() => Date.now());
  const left = secondsLeft(rest, now);
  const put = (next: Rest): void => {
    setRest(next);
    setNow(Date.now());
    keep(key, writeRest(next));
  };
  useEffect(() => {
    if (rest.until === null) return undefined;
    const timer = setInterval(() => {
      setNow(Date.now());
      if (secondsLeft(rest, Date.now()) > 0) return;
      clearInterval(timer);
      setRest({ ...rest, until: null });
      keep(key, writeRest({ ...rest, until: null }));
      announce("The rest is over");
    }, 500);
    return () => clearInterval(timer);
  }, [rest, key]);
  return {
    minutes: rest.minutes,
    left,
    setMinutes: (minutes) => put({ minutes, until: null }),
    begin: () => put(begun(rest, Date.now())),
    end: () => put({ ...rest, until: null }),
  };
}
