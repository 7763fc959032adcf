import { attributeName } from "@partsproof/core/sensory";

const FACTS: Readonly<Record<string, string>> = {
  casks: "its casks",
  grains: "its grain bill",
  age: "its age",
  price: "its price",
  release: "the year of its release",
  kind: "its kind",
  distillery: "where it was distilled",
  place: "where it comes from",
  tags: "its tags",
  maker: "its maker",
  "volume left": "how much is left",
};

/** A fact that a rule asks for and nobody has written down, in words: "what stone fruit it has". */
export function factWords(fact: string): string {
  if (fact.startsWith("profile ")) return `how much ${nameOf(fact.slice("profile ".length))} it has`;
  const slot = / of slot (\d+)$/u.exec(fact);
  if (slot) return `${FACTS[fact.slice(0, slot.index)] ?? fact} in slot ${slot[1]}`;
  return FACTS[fact] ?? fact;
}

/** "strength", "age", or an attribute's name. */
export const nameOf = (what: string): string => attributeName(what);

/** A value that breaks a rule, with as many digits as matter. */
export const valueWords = (value: number | string): string =>
  typeof value === "number" ? String(Math.round(value * 100) / 100) : value;
