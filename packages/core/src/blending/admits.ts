import type { Rule } from "./rule.ts";
import { RULE_TOLERANCE } from "./rule.ts";
import type { ShelfWhiskey } from "./whiskey.ts";
import { known } from "./known.ts";

const every = (facts: readonly string[], allowed: readonly string[]): boolean =>
  facts.length > 0 && facts.every((fact) => allowed.includes(fact));
const none = (facts: readonly string[], forbidden: readonly string[]): boolean =>
  facts.length > 0 && !facts.some((fact) => forbidden.includes(fact));

const grainsIn = (whiskey: ShelfWhiskey): readonly string[] =>
  Object.entries(whiskey.grains ?? {})
    .filter(([, share]) => share > 0)
    .map(([grain]) => grain);

/** A grain bill that leaves a remainder unsaid can hold any grain. */
const billIsWhole = (whiskey: ShelfWhiskey): boolean =>
  Object.values(whiskey.grains ?? {}).reduce((sum, share) => sum + share, 0) >= 1 - 1e-6;

/**
 * Whether a rule lets a whiskey into a recipe at all. Rules about a whole recipe let all in, except those whose whiskeys lack the
 * fact the rule asks for.
 */
export function admits(rule: Rule, whiskey: ShelfWhiskey): boolean {
  const woods = (whiskey.casks ?? []).map(({ species }) => species);
  const held = (whiskey.casks ?? []).map((cask) => cask.held);
  const maker = !known(whiskey.maker) ? [] : [whiskey.maker];
  switch (rule.kind) {
    case "onlyWhiskeys":
      return rule.ids.includes(whiskey.id);
    case "withoutWhiskeys":
      return !rule.ids.includes(whiskey.id);
    case "onlyMakers":
      return every(maker, rule.makers);
    case "withoutMakers":
      return none(maker, rule.makers);
    case "onlyWoods":
      return every(woods, rule.species);
    case "withoutWoods":
      return none(woods, rule.species);
    case "onlyCasks":
      return every(held, rule.held);
    case "withoutCasks":
      return none(held, rule.held);
    case "onlyGrains":
      return billIsWhole(whiskey) && every(grainsIn(whiskey), rule.grains);
    case "withoutGrains":
      return billIsWhole(whiskey) && none(grainsIn(whiskey), rule.grains);
    case "requireTags":
      return rule.tags.every((tag) => (whiskey.tags ?? []).includes(tag));
    case "forbidTags":
      return !rule.tags.some((tag) => (whiskey.tags ?? []).includes(tag));
    case "minAge":
      return (whiskey.ageYears ?? -1) >= rule.years - RULE_TOLERANCE;
    case "notGone":
      return whiskey.gone !== true;
    case "oneGroup":
      return known(whiskey.group);
    case "maxPricePerLitre":
    case "maxPricePerBottle":
      return known(whiskey.pricePerLitre);
    case "batch":
      return (whiskey.availableMl ?? 0) > 0;
    case "atMostParts":
      return rule.id !== whiskey.id || rule.parts >= 1;
    case "strength":
    case "mustUse":
    case "atLeastParts":
    case "grainShare":
    case "tagShare":
      return true;
  }
}
