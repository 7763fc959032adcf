import { BY_STRENGTH, REFERENCE } from "./priors.data.ts";
import type { Conditions } from "./question.ts";

const GAS = 8.314462618e-3;
const KELVIN = 273.15;

/** What is not known of how conditions act, as one course has it. */
export interface Effects {
  readonly dosePower: number;
  readonly thicknessPower: number;
  /** kJ/mol. */
  readonly activation: number;
  readonly eachUse: number;
}

/** How many times the rise, and how many times the speed, of the reference conditions. */
export function conditionsEffect(
  { caskRatio, thicknessCm, abv20, celsius, use }: Conditions,
  { dosePower, thicknessPower, activation, eachUse }: Effects,
): { readonly rise: number; readonly speed: number } {
  const colder = 1 / (KELVIN + REFERENCE.celsius) - 1 / (KELVIN + celsius);
  return {
    rise:
      (caskRatio / REFERENCE.caskRatio) ** dosePower * byStrength(abv20) * eachUse ** (use - REFERENCE.use),
    speed: Math.exp((activation / GAS) * colder) * (REFERENCE.thicknessCm / thicknessCm) ** thicknessPower,
  };
}

/** How much of the rise a strength brings out. */
function byStrength(abv20: number): number {
  const after = BY_STRENGTH.findIndex(([abv]) => abv >= abv20);
  if (after === 0) return BY_STRENGTH[0]?.[1] ?? 1;
  if (after < 0) return BY_STRENGTH.at(-1)?.[1] ?? 1;
  const [a, from] = BY_STRENGTH[after - 1] ?? [0, 1];
  const [b, to] = BY_STRENGTH[after] ?? [1, 1];
  return from + ((abv20 - a) / (b - a)) * (to - from);
}
