export { compensatedSum } from "./compensated-sum.ts";
export { exactSum } from "./exact-sum.ts";
export { rootByBrent } from "./root-by-brent.ts";
export { rootByNewton } from "./root-by-newton.ts";
