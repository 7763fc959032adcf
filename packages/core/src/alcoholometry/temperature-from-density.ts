import { polynomial, rootByBrent, rootOfPolynomial } from "../numeric/index.ts";
import { within } from "../quantity/index.ts";
import type { Celsius, KgPerM3, MassFraction } from "../quantity/index.ts";
import { temperaturePolynomial } from "./density-formula.ts";
import { coldestLiquid } from "./freezing-point.ts";
import { T20 } from "./reference-temperatures.ts";

const WARMEST = 40 - T20;

/** A density past the ends of the range by less than this is rounding, kg/m³. */
const ROUNDING = 1e-9;

/**
 * Every temperature, coldest first, at which a mixture of mass fraction `p` has density `rho`: none, one or two. Weak mixtures
 * are densest some degrees above freezing (water at 4 °C), so they have most densities near there twice; only the liquid's
 * look can tell which.
 *
 * Domain: mass fraction 0 to 1; answers lie from -20 °C, or from where the mixture freezes if that is warmer, to 40 °C.
 * Accuracy: `density` of an answer is `rho` within 1e-9 kg/m³. The temperature is good to 1e-9 °C away from the densest point and
 * no better than 1e-4 °C at it, where the density hardly changes.
 *
 * Source: OIML R 22 formula, a polynomial of degree 6 in the temperature. Cost: about a microsecond.
 *
 * @throws RangeError when `p` is outside its domain or `rho` not a number of 0 or more.
 * @example
 * temperaturesFromDensity(massFraction(0), kgPerM3(999.9)); // [1.08…, 6.94…]
 * temperaturesFromDensity(massFraction(0.4), kgPerM3(935.14)); // [20.00…]
 */
export function temperaturesFromDensity(p: MassFraction, rho: KgPerM3): readonly Celsius[] {
  within("mass fraction", "", p, 0, 1);
  within("density", "kg/m³", rho, 0, Infinity);
  const c = temperaturePolynomial(p);
  const coldest = coldestLiquid(p) - T20;
  const densest = densestBetween(c, coldest, WARMEST);
  const found = [
    ...(densest > coldest ? rootBetween(c, rho, coldest, densest, true) : []),
    ...rootBetween(c, rho, densest, WARMEST, false),
  ];
  return [...new Set(found)].map((dt) => (dt + T20) as Celsius);
}

/** Where the density is greatest; the cold end when it only falls. */
function densestBetween(c: readonly number[], low: number, high: number): number {
  const slope = c.slice(1).map((coefficient, k) => coefficient * (k + 1));
  const at = (dt: number): number => polynomial(slope, dt);
  return at(low) > 0 ? rootByBrent(at, low, high) : low;
}

/** The one place of a monotone stretch where the density is `rho`, if it is there. */
function rootBetween(
  c: readonly number[],
  rho: number,
  low: number,
  high: number,
  rising: boolean,
): readonly number[] {
  const [least, most] = rising
    ? [polynomial(c, low), polynomial(c, high)]
    : [polynomial(c, high), polynomial(c, low)];
  if (rho < least - ROUNDING || rho > most + ROUNDING) return [];
  if (rho >= most) return [rising ? high : low];
  if (rho <= least) return [rising ? low : high];
  return [rootOfPolynomial(c, rho, { low, high, start: (low + high) / 2, rising })];
}
