const WORDS = "two three four five six seven eight nine ten".split(" ");

const spelled = (n: number): string => WORDS[n - 2] ?? n.toLocaleString("en-GB");

function twoFigures(n: number): string {
  if (n < 100) return spelled(Math.round(n));
  const rounded = Number(n.toPrecision(2));
  return rounded < 1e6 ? rounded.toLocaleString("en-GB") : `${rounded / 1e6} million`;
}

/**
 * A probability as odds in plain words, never more exact than it is.
 *
 * - exactly one in a whole number up to a million: "one in eight", "one in 120" (in words up to ten)
 * - within 5 % of one in a whole number: "about one in 11"; from 100 on two figures: "about one in 360,000"
 * - otherwise in a hundred: "about 29 in 100"
 * - below one in a thousand million: "fewer than one in a thousand million"; 0 and 1: "nobody", "everybody"
 *
 * @param p 0 to 1
 * @throws RangeError outside that range
 * @example plainOdds(0.125) // "one in eight"
 */
export function plainOdds(p: number): string {
  if (!(p >= 0 && p <= 1)) throw new RangeError(`plainOdds requires a probability from 0 to 1, got ${p}`);
  if (p === 0) return "nobody";
  if (p === 1) return "everybody";
  if (p < 1e-9) return "fewer than one in a thousand million";
  const n = 1 / p;
  const whole = Math.round(n);
  if (whole >= 2 && whole <= 1e6 && Math.abs(n - whole) < 1e-12 * whole) return `one in ${spelled(whole)}`;
  if (whole >= 2 && Math.abs(n - whole) <= 0.05 * n) return `about one in ${twoFigures(n)}`;
  const hundredths = Math.round(100 * p);
  return hundredths === 100 ? "more than 99 in 100" : `about ${hundredths} in 100`;
}

/**
 * How well guessing would do, in plain words: `plainOdds` in a sentence. The probability must be an upper tail that
 * includes the observed result ("as many right or more").
 *
 * @example plainChance(0.125) // "one in eight would do as well by guessing"
 */
export function plainChance(p: number): string {
  return `${plainOdds(p)} would do as well by guessing`;
}
