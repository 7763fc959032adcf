import type { Household } from "@partsproof/house/protocol";
import { createContext, useContext, useSyncExternalStore } from "react";
import { keep, kept, onKept } from "./kept.ts";

const KEY = "household";

/** The household this device was last in; a guess until the house confirms it. */
export function lastHousehold(): string | null {
  return kept(KEY);
}

export function keepHousehold(id: string | null): void {
  if (kept(KEY) !== id) keep(KEY, id);
}

export function useLastHousehold(): string | null {
  return useSyncExternalStore(onKept, lastHousehold);
}

export const HouseholdContext = createContext<Household | null>(null);

/** The household of the screen; only for screens under /h/:household. */
export function useHousehold(): Household {
  const household = useContext(HouseholdContext);
  if (household === null) throw new Error("this screen requires a household in its address, got none");
  return household;
}
