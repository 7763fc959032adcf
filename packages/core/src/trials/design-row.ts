import { type MixtureModel, mixtureTerms } from "../statistics/index.ts";

/** The terms of a model at a mixture: what a run says about each coefficient of Scheffé's polynomial. */
export function designRow(model: MixtureModel, shares: readonly number[]): Float64Array {
  return Float64Array.from(mixtureTerms(model, shares.length), (term) =>
    term.reduce((product, i) => product * (shares[i] as number), 1),
  );
}
