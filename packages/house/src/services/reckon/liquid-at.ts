import { density, freezingPoint, massFractionFromAbv20 } from "@partsproof/core/alcoholometry";
import {
  type Abv20,
  abv20,
  celsius,
  type Celsius,
  type KgPerM3,
  massFraction,
} from "@partsproof/core/quantity";
import { refuse } from "../refuse.ts";

/** Density of a mixture at a temperature, both within their limits: what core still refuses is ice. */
export function densityAt(p: number, t: number, path: readonly (string | number)[] = ["celsius"]): KgPerM3 {
  try {
    return density(massFraction(p), celsius(t));
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    const limit = `at least the freezing point, about ${freezingPoint(massFraction(p))?.toFixed(1)} °C`;
    refuse(422, {
      code: "mixture_frozen",
      path: [...path],
      limit,
      received: t,
      message: `celsius requires ${limit}, got ${t} °C`,
    });
  }
}

/** A bench's temperature at which every one of these liquids is liquid. */
export function benchAt(
  t: number,
  strengths: readonly Abv20[],
  path?: readonly (string | number)[],
): Celsius {
  for (const abv of strengths) densityAt(massFractionFromAbv20(abv), t, path);
  return celsius(t);
}

/** More than any label's rule lets it be off, % vol. */
const LABEL_OFF = 1.6;

const weakest = (abv: Abv20): Abv20 => abv20(Math.max(0, abv - LABEL_OFF));

/** The coldest a bench at `t` may be taken to be without freezing any of these liquids, their labels being off. */
export function coldestAt(t: number, strengths: readonly Abv20[]): number {
  const freezing = strengths.map((abv) => freezingPoint(massFractionFromAbv20(weakest(abv))) ?? -20);
  return Math.min(t, Math.max(-20, ...freezing));
}

/** The weakest that a liquid seen to be liquid at `t` may be taken to be: 0, unless that would have it frozen. */
export function weakestAt(t: number, abv: Abv20): number {
  const freezing = freezingPoint(massFractionFromAbv20(weakest(abv)));
  return freezing === null || t >= freezing ? 0 : abv;
}
