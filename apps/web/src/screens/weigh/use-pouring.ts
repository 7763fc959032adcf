import { useState } from "react";
import { keep, kept } from "../../session/index.ts";
import { asPouring, type Pouring } from "../../weighing/index.ts";

/** The pouring under way on this device, kept at every step so that a reload finds it again. */
export function useKeptPouring(name: string): readonly [Pouring | null, (pouring: Pouring | null) => void] {
  const key = `weigh.${name}`;
  const [pouring, setPouring] = useState(() => asPouring(kept(key)));
  return [
    pouring,
    (next) => {
      setPouring(next);
      keep(key, next === null ? null : JSON.stringify(next));
    },
  ];
}
