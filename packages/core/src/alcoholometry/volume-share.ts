import { rootByNewton } from "../numeric/index.ts";
import { densityFormula, densitySlopeFormula } from "./density-formula.ts";

/** Volume of the ethanol alone over volume of the mixture, both at `t` (OIML R 22: q = p rho(p) / rho(1)); 0 to 1. */
export function volumeShare(p: number, t: number): number {
  return (p * densityFormula(p, t)) / densityFormula(1, t);
}

/** The mass fraction whose volume share at `t` is `q`. Both ends are exact. */
export function massFractionOfShare(q: number, t: number): number {
  if (q <= 0) return 0;
  if (q >= 1) return 1;
  const ethanol = densityFormula(1, t);
  return rootByNewton(
    (p) => (p * densityFormula(p, t)) / ethanol - q,
    (p) => (densityFormula(p, t) + p * densitySlopeFormula(p, t)) / ethanol,
    0,
    1,
    1e-13,
  );
}
