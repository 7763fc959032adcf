import type { Rule, RuleKind } from "@partsproof/core/blending";
import type { SearchRules } from "../../protocol/index.ts";

/**
 * The rules of a problem as core's. A rule is named by its field; where a field holds several, by the field and the place in it
 * (`fieldOfRule`). `maxBottles` and `maxParts` are the problem's own.
 */
export function coreRules(rules: SearchRules): readonly Rule[] {
  const all = { ...oneEach(rules), ...strengthRules(rules) };
  const single = Object.entries(all).flatMap(([name, kind]) =>
    kind === undefined ? [] : [{ name, ...kind }],
  );
  return [...single, ...severalEach(rules)];
}

/** The field a rule came from. */
export const fieldOfRule = (name: string): string => name.replace(/ .*$/, "");

type Kinds = Readonly<Record<string, RuleKind | undefined>>;

const when = <T>(given: T | undefined, kind: (given: T) => RuleKind): RuleKind | undefined =>
  given === undefined ? undefined : kind(given);

function strengthRules({ abv, waterTo }: SearchRules): Kinds {
  const water = waterTo === undefined ? {} : { waterTo };
  return {
    abv: when(abv, ([low, high]) => ({ kind: "strength", low, high, ...water })),
    // Water only lowers: what is to be watered to a strength must have it.
    waterTo: when(waterTo, (to) => ({ kind: "strength", low: to, high: 100 })),
  };
}

function oneEach(rules: SearchRules): Kinds {
  return {
    minAgeYears: when(rules.minAgeYears, (years) => ({ kind: "minAge", years })),
    maxPricePerLitre: when(rules.maxPricePerLitre, (price) => ({ kind: "maxPricePerLitre", price })),
    maxPricePerBottle: when(rules.maxPricePerBottle, (bottle) => ({
      kind: "maxPricePerBottle",
      ...bottle,
      ...(rules.waterTo === undefined ? {} : { waterTo: rules.waterTo }),
    })),
    forbidTags: when(rules.forbidTags, (tags) => ({ kind: "forbidTags", tags })),
    requireTags: when(rules.requireTags, (tags) => ({ kind: "requireTags", tags })),
    mustUse: when(rules.mustUse, (ids) => ({ kind: "mustUse", ids })),
    onlyWhiskeys: when(rules.onlyWhiskeys, (ids) => ({ kind: "onlyWhiskeys", ids })),
    withoutWhiskeys: when(rules.withoutWhiskeys, (ids) => ({ kind: "withoutWhiskeys", ids })),
    keep: when(rules.keep, (ids) => ({ kind: "withoutWhiskeys", ids })),
    onlyMakers: when(rules.onlyMakers, (makers) => ({ kind: "onlyMakers", makers })),
    withoutMakers: when(rules.withoutMakers, (makers) => ({ kind: "withoutMakers", makers })),
    onlyWoods: when(rules.onlyWoods, (species) => ({ kind: "onlyWoods", species })),
    withoutWoods: when(rules.withoutWoods, (species) => ({ kind: "withoutWoods", species })),
    onlyCasks: when(rules.onlyCasks, (held) => ({ kind: "onlyCasks", held })),
    withoutCasks: when(rules.withoutCasks, (held) => ({ kind: "withoutCasks", held })),
    onlyGrains: when(rules.onlyGrains, (grains) => ({ kind: "onlyGrains", grains })),
    withoutGrains: when(rules.withoutGrains, (grains) => ({ kind: "withoutGrains", grains })),
    oneGroup: when(rules.oneGroup, () => ({ kind: "oneGroup" })),
    notGone: when(rules.notGone, () => ({ kind: "notGone" })),
    batchMl: when(rules.batchMl, (ml) => ({ kind: "batch", ml })),
  };
}

function severalEach({ grainShare = [], tagShare = [], parts = [] }: SearchRules): readonly Rule[] {
  return [
    ...grainShare.map(({ grain, share: [low, high] }, n) => ({
      name: `grainShare ${n}`,
      kind: "grainShare" as const,
      grain,
      low,
      high,
    })),
    ...tagShare.map(({ tag, share: [low, high] }, n) => ({
      name: `tagShare ${n}`,
      kind: "tagShare" as const,
      tag,
      low,
      high,
    })),
    ...parts.flatMap(({ id, atLeast, atMost }, n): Rule[] => [
      ...(atLeast === undefined || atLeast === 0
        ? []
        : [{ name: `parts ${n} atLeast`, kind: "atLeastParts" as const, id, parts: atLeast }]),
      ...(atMost === undefined
        ? []
        : [{ name: `parts ${n} atMost`, kind: "atMostParts" as const, id, parts: atMost }]),
    ]),
  ];
}
