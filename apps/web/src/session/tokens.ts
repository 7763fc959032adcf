import { useSyncExternalStore } from "react";
import { keep, kept, onKept } from "./kept.ts";

/**
 * The kinds of secret a device can hold: `host` and `pourer` by flight, `sheet` by sheet; `guest`, by flight, that of somebody
 * who joined by a link or a code.
 */
export type TokenKind = "host" | "pourer" | "sheet" | "guest";

export function tokenOf(kind: TokenKind, id: string): string | undefined {
  return kept(`token.${kind}.${id}`) ?? undefined;
}

export function keepToken(kind: TokenKind, id: string, token: string | null): void {
  keep(`token.${kind}.${id}`, token);
}

export function useToken(kind: TokenKind, id: string): string | undefined {
  return useSyncExternalStore(onKept, () => tokenOf(kind, id));
}

/** The token that shows this device at a flight as a whole: a guest's first, since a guest has nothing else to show. */
function flightTokenOf(flight: string): string | undefined {
  return tokenOf("guest", flight) ?? tokenOf("host", flight) ?? tokenOf("pourer", flight);
}

export function useFlightToken(flight: string): string | undefined {
  return useSyncExternalStore(onKept, () => flightTokenOf(flight));
}
