import { polynomial, rootOfPolynomial } from "../numeric/index.ts";
import { densityPolynomial, ethanolDensity, MIDDLE } from "./density-formula.ts";
import { guessFromVolumeShare } from "./first-guess.ts";

/** Volume of the ethanol alone over volume of the mixture, both at `t` (OIML R 22: q = p rho(p) / rho(1)); 0 to 1. */
export function volumeShare(p: number, t: number): number {
  const rho =
    p < MIDDLE
      ? polynomial(densityPolynomial("weak", t), p)
      : polynomial(densityPolynomial("strong", t), p - 1);
  return (p * rho) / ethanolDensity(t);
}

/** p rho(p) by powers of p, or of p - 1. */
const ETHANOL = /* @__PURE__ */ new Float64Array(13);

/** The mass fraction whose volume share at `t` is `q`. Both ends are exact. */
export function massFractionOfShare(q: number, t: number): number {
  if (q <= 0) return 0;
  if (q >= 1) return 1;
  const y = q * ethanolDensity(t);
  const weak = densityPolynomial("weak", t);
  const start = guessFromVolumeShare(q);
  if (y < MIDDLE * polynomial(weak, MIDDLE)) {
    ETHANOL[0] = 0;
    for (let k = 0; k < weak.length; k++) ETHANOL[k + 1] = weak[k] as number;
    return rootOfPolynomial(ETHANOL, y, {
      low: 0,
      high: MIDDLE,
      start: Math.min(start, MIDDLE),
      rising: true,
    });
  }
  // p rho = rho + (p - 1) rho.
  const strong = densityPolynomial("strong", t);
  ETHANOL[0] = strong[0] as number;
  for (let k = 1; k < strong.length; k++) ETHANOL[k] = (strong[k] as number) + (strong[k - 1] as number);
  ETHANOL[strong.length] = strong[strong.length - 1] as number;
  const range = { low: MIDDLE - 1, high: 0, start: Math.max(start, MIDDLE) - 1, rising: true };
  return 1 + rootOfPolynomial(ETHANOL, y, range);
}
