import { useState } from "react";
import { keep, kept } from "../../session/index.ts";

export interface Ticks {
  readonly has: (code: string) => boolean;
  readonly set: (code: string, on: boolean) => void;
  readonly count: number;
}

/** Which of some codes are ticked off, kept on this phone so that a pause does not lose the place. Codes only. */
export function useTicks(key: string, codes: readonly string[]): Ticks {
  const [ticked, setTicked] = useState<ReadonlySet<string>>(
    () => new Set((kept(key) ?? "").split(" ").filter((code) => codes.includes(code))),
  );
  return {
    has: (code) => ticked.has(code),
    set: (code, on) => {
      const next = new Set(ticked);
      if (on) next.add(code);
      else next.delete(code);
      setTicked(next);
      keep(key, next.size === 0 ? null : [...next].join(" "));
    },
    count: ticked.size,
  };
}
