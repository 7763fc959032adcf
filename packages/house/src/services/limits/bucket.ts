import { Remembered } from "../remembered.ts";

/** So many at once, and then so many a second. */
export interface Rate {
  readonly atOnce: number;
  readonly perSecond: number;
}

/** Token buckets by key. */
export function createBuckets({ atOnce, perSecond }: Rate) {
  const buckets = new Remembered<{ readonly left: number; readonly at: number }>();
  /** Takes one and gives 0, or gives how many milliseconds there is to wait. */
  return (key: string, now: number): number => {
    const { left, at } = buckets.get(key) ?? { left: atOnce, at: now };
    const filled = Math.min(atOnce, left + (Math.max(0, now - at) / 1000) * perSecond);
    if (filled < 1) return ((1 - filled) / perSecond) * 1000;
    buckets.set(key, { left: filled - 1, at: now });
    return 0;
  };
}

export interface Patience {
  /** So many wrong tries are free. */
  readonly free: number;
  readonly firstWaitMs: number;
  readonly longestWaitMs: number;
  /** After so long without a wrong one all is forgotten. */
  readonly forgetMs: number;
}

/** Waits that double with every wrong try. */
export function createBackOff({ free, firstWaitMs, longestWaitMs, forgetMs }: Patience) {
  const wrongs = new Remembered<{ readonly count: number; readonly at: number }>();
  const counted = (key: string, now: number) => {
    const known = wrongs.get(key);
    return known && now - known.at < forgetMs ? known : { count: 0, at: now };
  };
  const waitAfter = (count: number): number =>
    count < free ? 0 : Math.min(longestWaitMs, firstWaitMs * 2 ** Math.min(count - free, 30));
  return {
    /** How long there is to wait before the next try is looked at; 0 for not at all. */
    wait: (key: string, now: number): number => {
      const { count, at } = counted(key, now);
      return Math.max(0, at + waitAfter(count) - now);
    },
    /** Counts a wrong try; whether it is the first that has to wait. */
    wrong: (key: string, now: number): boolean => {
      const count = counted(key, now).count + 1;
      wrongs.set(key, { count, at: now });
      return count === free;
    },
    right: (key: string): void => wrongs.delete(key),
  };
}
