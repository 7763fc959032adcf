import { polynomial, rootOfPolynomial } from "../numeric/index.ts";
import { densityPolynomial } from "./density-formula.ts";
import { T20 } from "./reference-temperatures.ts";

/** Cells of the tables of first guesses. */
const CELLS = 64;

/**
 * Values of `f`, a function of 0 to 1, at 65 points evenly spaced, made when first asked for: made at load, it would run in
 * pages that never ask.
 */
function tabled(f: (x: number) => number): (x: number) => number {
  let rows: Float64Array | undefined;
  return (x) => {
    rows ??= Float64Array.from({ length: CELLS + 1 }, (_, k) => f(k / CELLS));
    const at = x * CELLS;
    const k = Math.min(CELLS - 1, Math.trunc(at));
    const low = rows[k] as number;
    return low + (at - k) * ((rows[k + 1] as number) - low);
  };
}

/** The range of the inversion, from the middle: used only to make the tables. */
const whole = { low: 0, high: 1, start: 0.5 };

/**
 * A mass fraction near that whose density lies a share `s` of the way from water's to ethanol's. Made for 20 °C, where it is
 * good to 1e-3; up to 0.03 off at the ends of the temperature range, which costs a step.
 */
export const guessFromDensityShare: (s: number) => number = /* @__PURE__ */ tabled((s) => {
  const density = densityPolynomial("weak", T20);
  const water = polynomial(density, 0);
  const y = water + s * (polynomial(density, 1) - water);
  return rootOfPolynomial(density, y, { ...whole, rising: false });
});

/** A mass fraction near that whose ethanol takes up a share `q` of the volume. Made for 20 °C; 60 °F differs by 1e-3. */
export const guessFromVolumeShare: (q: number) => number = /* @__PURE__ */ tabled((q) => {
  const density = densityPolynomial("weak", T20);
  const ethanol = Float64Array.of(0, ...density);
  return rootOfPolynomial(ethanol, q * polynomial(density, 1), { ...whole, rising: true });
});
