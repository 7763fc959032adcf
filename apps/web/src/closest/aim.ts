import type { Target } from "@partsproof/core/blending";

/** What is sought: intensities of 0 to 10 that count, and how much each counts. */
export interface Aim {
  /** The whiskey it began from; "" for a profile drawn from nothing. */
  readonly from: string;
  /** Only these attributes count. */
  readonly profile: Readonly<Record<string, number>>;
  /** 0 to 3; 1 where left out. */
  readonly weights: Readonly<Record<string, number>>;
}

export const NO_AIM: Aim = { from: "", profile: {}, weights: {} };

/** Intensities are set in halves: nobody tastes finer (common practice, no source). */
export const INTENSITY_STEP = 0.5;
export const MOST_WEIGHT = 3;

const kept = (value: number, most: number): number => Math.min(most, Math.max(0, value));

/** The aim with one attribute at an intensity, or not counted (null). */
export function withIntensity(aim: Aim, attribute: string, value: number | null): Aim {
  const { [attribute]: _, ...others } = aim.profile;
  return { ...aim, profile: value === null ? others : { ...aim.profile, [attribute]: kept(value, 10) } };
}

export function withWeight(aim: Aim, attribute: string, weight: number): Aim {
  return { ...aim, weights: { ...aim.weights, [attribute]: kept(weight, MOST_WEIGHT) } };
}

export const weightOf = (aim: Pick<Aim, "weights">, attribute: string): number => aim.weights[attribute] ?? 1;

/** As core seeks it; null while nothing counts. */
export function targetOf(aim: Aim, attributes: readonly string[]): Target | null {
  const counted = attributes.filter((attribute) => aim.profile[attribute] !== undefined);
  if (!counted.some((attribute) => weightOf(aim, attribute) > 0)) return null;
  return {
    profile: Object.fromEntries(counted.map((attribute) => [attribute, aim.profile[attribute] ?? 0])),
    weights: Object.fromEntries(counted.map((attribute) => [attribute, weightOf(aim, attribute)])),
  };
}
