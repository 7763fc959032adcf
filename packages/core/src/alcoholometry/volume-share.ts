import { polynomial, rootOfPolynomial } from "../numeric/index.ts";
import { densityPolynomial } from "./density-formula.ts";
import { guessFromVolumeShare } from "./first-guess.ts";

/** Volume of the ethanol alone over volume of the mixture, both at `t` (OIML R 22: q = p rho(p) / rho(1)); 0 to 1. */
export function volumeShare(p: number, t: number): number {
  const density = densityPolynomial(t);
  return (p * polynomial(density, p)) / polynomial(density, 1);
}

/** p rho(p) by powers of p. */
const ETHANOL = /* @__PURE__ */ new Float64Array(13);

/** The mass fraction whose volume share at `t` is `q`. Both ends are exact. */
export function massFractionOfShare(q: number, t: number): number {
  if (q <= 0) return 0;
  if (q >= 1) return 1;
  const density = densityPolynomial(t);
  for (let k = 0; k < density.length; k++) ETHANOL[k + 1] = density[k] as number;
  const y = q * polynomial(density, 1);
  return rootOfPolynomial(ETHANOL, y, { low: 0, high: 1, start: guessFromVolumeShare(q), rising: true });
}
