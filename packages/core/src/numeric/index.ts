export { compensatedSum } from "./compensated-sum.ts";
export { exactSum } from "./exact-sum.ts";
export { runningSum } from "./running-sum.ts";
export type { RunningSum } from "./running-sum.ts";
export { rootByBrent } from "./root-by-brent.ts";
export { rootByNewton } from "./root-by-newton.ts";
export { polynomial } from "./polynomial.ts";
export { rootOfPolynomial } from "./root-of-polynomial.ts";
export { integrate } from "./integrate.ts";
export {
  cholesky,
  inverseOf,
  solveCholesky,
  solveLower,
  solveLowerRows,
  solveUpper,
  type Square,
} from "./cholesky.ts";
export { dot, fourProducts, product } from "./product.ts";
export { timesRows } from "./times-rows.ts";
export { type Concave, type Maximum, maximiseConcave } from "./maximise-concave.ts";
export { type Climbed, type ClimbOptions, climb, type Slope } from "./climb.ts";
export { type Eigen, symmetricEigen } from "./symmetric-eigen.ts";
export { type LeastSquares, leastSquares } from "./least-squares.ts";
