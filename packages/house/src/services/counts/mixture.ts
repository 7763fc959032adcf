import { mixtureFit, studentHalfWidth } from "@partsproof/core/statistics";
import type { BodyRead, CountsReason, MixtureAnswer } from "../../protocol/index.ts";
import { DEFAULT_LEVEL } from "./told-numbers.ts";

export function countsMixture({
  components,
  runs,
  model = "quadratic",
  level = DEFAULT_LEVEL,
}: BodyRead<"countsMixture">): MixtureAnswer {
  const fit = mixtureFit(components, runs, model);
  const notes = runs.flatMap(({ x }, n) => {
    const sum = x.reduce((total, share) => total + share, 0);
    return Math.abs(sum - 1) > 1e-9
      ? [`the shares of run ${n + 1} add up to ${Number(sum.toPrecision(6))} and were used as they stand`]
      : [];
  });
  const terms = fit.terms;
  const asked = { model, runs: runs.length, terms, df: runs.length - terms, level, notes };
  if (!fit.ok) {
    return {
      ...asked,
      coefficients: fit.coefficients === null ? null : { ...fit.coefficients },
      standardErrors: null,
      intervals: null,
      sigma: null,
      rSquared: null,
      reason: reasonOf(fit.code, terms, runs.length),
    };
  }
  const { coefficients, standardErrors, sigma, rSquared } = fit;
  const half = studentHalfWidth(level, fit.df);
  return {
    ...asked,
    coefficients: { ...coefficients },
    standardErrors: { ...standardErrors },
    intervals: Object.fromEntries(
      Object.entries(coefficients).map(([term, value]) => {
        const wide = half * (standardErrors[term] ?? 0);
        return [term, [value - wide, value + wide] as [number, number]];
      }),
    ),
    sigma,
    rSquared,
    reason: null,
  };
}

function reasonOf(
  code: "terms_not_separable" | "no_degrees_left",
  terms: number,
  runs: number,
): CountsReason {
  const message =
    code === "no_degrees_left"
      ? `${terms} terms require more than ${terms} runs to say how far off they are, got ${runs}`
      : `these mixtures are too few or too like each other to tell ${terms} terms apart`;
  return { code, message };
}
