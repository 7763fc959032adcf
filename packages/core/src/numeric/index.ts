export { compensatedSum } from "./compensated-sum.ts";
export { exactSum } from "./exact-sum.ts";
export { runningSum } from "./running-sum.ts";
export type { RunningSum } from "./running-sum.ts";
export { rootByBrent } from "./root-by-brent.ts";
export { rootByNewton } from "./root-by-newton.ts";
export { polynomial } from "./polynomial.ts";
export { rootOfPolynomial } from "./root-of-polynomial.ts";
export { integrate } from "./integrate.ts";
