import { listed } from "../figures/index.ts";
import type { Rules } from "./rules.ts";

/** A rule of core's answer as the sentence it stands for. */
export function ruleWords(
  name: string,
  rules: Rules,
  nameOf: (id: string) => string,
  currency: string,
): string {
  const names = (ids: readonly string[]): string => listed(ids.map(nameOf));
  const words: Readonly<Record<string, string>> = {
    maxBottles: `at most ${rules.maxBottles} ${rules.maxBottles === 1 ? "bottle" : "bottles"}`,
    maxParts: `at most ${rules.maxParts} parts`,
    notTarget: "not from the whiskey itself",
    onShelf: "only what is on the shelf",
    strength: `${rules.low} to ${rules.high} % vol before water`,
    minAge: `at least ${rules.years} years`,
    wood: `only ${rules.wood}`,
    withoutHeld: `no cask that held ${rules.held}`,
    notGone: "no gone releases",
    onePlace: "all distilled at one place",
    grain: `at least ${rules.grainPercent} % of the alcohol from ${rules.grain}`,
    mustUse: `must use ${names(rules.mustUse)}`,
    keep: `keep ${names(rules.keep)} for another day`,
    mostOfOne: `at most ${rules.mostParts} of ${nameOf(rules.mostOf)}`,
    price: `at most ${rules.price} ${currency} for 700 mL`,
    batch: `enough on the shelf for ${rules.batch}`,
  };
  return words[name] ?? name;
}
