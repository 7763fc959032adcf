import type { Problem, ShelfWhiskey, Target } from "@partsproof/core/blending";
import { abv20 } from "@partsproof/core/quantity";
import type { SearchProblem, SearchTarget, SearchWhiskey } from "../../protocol/index.ts";
import { bare } from "./bare.ts";
import { coreRules } from "./core-rules.ts";

/** A problem as a file has it, as core searches it. */
export function coreProblem({ whiskeys, target, rules, distance, shares }: SearchProblem): Problem {
  return {
    ...(distance === undefined ? {} : { distance }),
    ...(shares === undefined ? {} : { shares }),
    whiskeys: whiskeys.map(coreWhiskey),
    target: coreTarget(target),
    maxBottles: rules.maxBottles,
    maxParts: rules.maxParts,
    rules: coreRules(rules),
  };
}

export function coreWhiskey({ abv, profile, grains, tags, gone, ...facts }: SearchWhiskey): ShelfWhiskey {
  return {
    id: facts.id,
    abv20: abv20(abv),
    profile: bare(profile),
    pricePerLitre: facts.pricePerLitre ?? null,
    availableMl: facts.availableMl ?? null,
    ageYears: facts.ageYears ?? null,
    grains: grains ? bare(grains) : null,
    casks: facts.casks ?? null,
    tags: tags ?? [],
    maker: facts.maker ?? null,
    group: facts.group ?? null,
    gone: gone ?? false,
  };
}

export function coreTarget({ profile, weights, exponents }: SearchTarget): Target {
  return {
    profile: bare(profile),
    ...(weights === undefined ? {} : { weights: bare(weights) }),
    ...(exponents === undefined ? {} : { exponents: bare(coreExponents(exponents)) }),
  };
}

/** Weights of attributes that the target has not. */
export const unusedWeights = ({ profile, weights }: SearchTarget): readonly string[] =>
  Object.keys(weights ?? {}).filter((attribute) => !Object.hasOwn(profile, attribute));

/** The strongest part that rules is the power law without end. */
const coreExponents = (exponents: NonNullable<SearchTarget["exponents"]>): Record<string, number> =>
  Object.fromEntries(
    Object.entries(exponents).map(([name, exponent]) => [
      name,
      exponent === "strongest" ? Infinity : exponent,
    ]),
  );
