import { useSyncExternalStore } from "react";
import { keep, kept, onKept } from "./kept.ts";

/** The three kinds of secret a device can hold: `host` and `pourer` by flight, `sheet` by sheet. */
export type TokenKind = "host" | "pourer" | "sheet";

export function tokenOf(kind: TokenKind, id: string): string | undefined {
  return kept(`token.${kind}.${id}`) ?? undefined;
}

export function keepToken(kind: TokenKind, id: string, token: string | null): void {
  keep(`token.${kind}.${id}`, token);
}

export function useToken(kind: TokenKind, id: string): string | undefined {
  return useSyncExternalStore(onKept, () => tokenOf(kind, id));
}
