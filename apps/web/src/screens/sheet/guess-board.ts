import type { NameOnOffer } from "@partsproof/house/protocol";
import type { z } from "zod";

export type Guesses = ReadonlyMap<string, string | null>;
type Name = z.infer<typeof NameOnOffer>;

/** The glasses that have a name, in the order given. */
export function glassesNamed(guesses: Guesses, nameId: string): readonly string[] {
  return [...guesses].flatMap(([code, guess]) => (guess === nameId ? [code] : []));
}

export function leftOf(guesses: Guesses, name: Name): number {
  return name.count - glassesNamed(guesses, name.nameId).length;
}

/** Why a glass cannot be given a name, or null where it can. */
export function refusal(guesses: Guesses, code: string, name: Name): string | null {
  const others = glassesNamed(guesses, name.nameId).filter((other) => other !== code);
  if (others.length < name.count) return null;
  const offered = name.count === 1 ? "once" : name.count === 2 ? "twice" : `${name.count} times`;
  return `${name.label} is offered ${offered}, and ${listed(others)} ${others.length === 1 ? "has" : "have"} it`;
}

const listed = (codes: readonly string[]): string =>
  codes.length === 1
    ? `glass ${codes[0]}`
    : `glasses ${codes.slice(0, -1).join(", ")} and ${codes.at(-1) ?? ""}`;
