import { abv20OfStrength, liquidOfVolume, mix } from "@partsproof/core/alcoholometry";
import { type Abv20, abv20, millilitres20, proof60F } from "@partsproof/core/quantity";
import { mixtureTerms } from "@partsproof/core/statistics";
import {
  chooseRuns,
  logDeterminantOf,
  pourInSteps,
  simplexCentroid,
  simplexLattice,
} from "@partsproof/core/trials";
import type { BodyRead, TrialPlan } from "../../protocol/index.ts";
import { refuse } from "../refuse.ts";

type Body = BodyRead<"planTrials">;

const DEFAULT = { volumeMl: 30, mostMl: 100, stepMl: 0.5, within: 0.01, steps: 2 } as const;

/** Which small mixes to make, how to pour each, and how strong it is. */
export function trialPlanOf(body: Body): TrialPlan {
  const { parts, plan, model = "quadratic", known = [], volumeMl = DEFAULT.volumeMl } = body;
  const terms = mixtureTerms(model, parts.length).length;
  const { shares, meanVariance } = chosen(body, terms);
  const strengths = parts.map(({ strength }) => (strength === undefined ? null : abvOf(strength)));
  const stepMl = strengths.map((abv) => stepOf(body, abv));
  const trials = shares.map((planned) => {
    const made = pourInSteps(planned, {
      leastMl: volumeMl,
      mostMl: body.mostMl ?? Math.max(volumeMl, DEFAULT.mostMl),
      stepMl,
      within: body.within ?? DEFAULT.within,
    });
    return {
      shares: planned,
      pouredShares: made.shares,
      ml: made.ml,
      g:
        body.scaleG === undefined
          ? null
          : made.ml.map((ml, i) => onScale(ml, strengths[i] ?? null, body.scaleG ?? 1)),
      totalMl: made.totalMl,
      off: made.off,
      ...strengthOf(made.ml, strengths),
    };
  });
  const totalMl = trials.reduce((sum, trial) => sum + trial.totalMl, 0);
  const pouredEfficiency =
    plan === "own"
      ? null
      : efficiency(
          [...known, ...trials.map(({ pouredShares }) => pouredShares)],
          [...known, ...shares],
          model,
          terms,
        );
  return {
    parts: parts.map(({ name }) => name),
    plan,
    model,
    terms,
    trials,
    pourList: parts
      .map(({ name }, i) => ({
        part: name,
        ml: trials.reduce((sum, trial) => sum + (trial.ml[i] ?? 0), 0),
        intoTrials: trials.flatMap((trial, n) => ((trial.ml[i] ?? 0) > 0 ? [n + 1] : [])),
      }))
      .filter(({ ml }) => ml > 0)
      .toSorted((a, b) => b.ml - a.ml),
    totalMl,
    overMl: totalMl - volumeMl * trials.length,
    pouredEfficiency,
    meanVariance,
    notes: notesOf(body, trials, pouredEfficiency, terms),
  };
}

function chosen(
  { parts, plan, mixes = [], model = "quadratic", trials, steps = DEFAULT.steps, known = [] }: Body,
  terms: number,
): { readonly shares: number[][]; readonly meanVariance: number | null } {
  if (plan === "lattice") return { shares: simplexLattice(parts.length, steps), meanVariance: null };
  if (plan === "own") return { shares: mixes.map(sharesOf), meanVariance: null };
  if (plan === "centroid") return { shares: simplexCentroid(parts.length), meanVariance: null };
  const runs = trials ?? Math.max(1, terms - known.length);
  if (runs + known.length < terms)
    refuse(422, {
      code: "too_few_trials",
      path: ["trials"],
      limit: `at least ${terms - known.length}`,
      received: runs,
      message: `trials requires at least ${terms - known.length}, as ${model} has ${terms} terms, got ${runs}`,
    });
  const bounds = parts.map(({ low = 0, high = 1 }) => ({ low, high }));
  const found = chooseRuns({ criterion: plan, model, bounds, runs, known });
  if (found === null)
    refuse(422, {
      code: "terms_not_separable",
      path: ["parts"],
      limit: `bounds that let ${terms} terms be told apart`,
      received: parts.length,
      message: `parts requires bounds that let the ${terms} terms of ${model} be told apart; a part whose share cannot change has none`,
    });
  return { shares: found.runs, meanVariance: found.meanVariance };
}

function sharesOf(mix: readonly number[]): number[] {
  const all = mix.reduce((sum, part) => sum + part, 0);
  return mix.map((part) => part / all);
}

const abvOf = (strength: NonNullable<Body["parts"][number]["strength"]>): Abv20 =>
  abv20OfStrength(
    strength.basis === "abv20"
      ? { basis: strength.basis, value: abv20(strength.value) }
      : { basis: strength.basis, value: proof60F(strength.value) },
  );

const gramsOf = (ml: number, abv: Abv20): number => {
  const { ethanolG, waterG } = liquidOfVolume(millilitres20(ml), abv);
  return ethanolG + waterG;
};

/** A step of the syringe, or what a step of the scale is of this liquid. */
function stepOf({ syringeMl, scaleG }: Body, abv: Abv20 | null): number {
  if (scaleG === undefined || abv === null) return syringeMl ?? DEFAULT.stepMl;
  return scaleG / gramsOf(1, abv);
}

/** Grams in whole steps of the scale. */
const onScale = (ml: number, abv: Abv20 | null, step: number): number =>
  abv === null || ml === 0 ? 0 : Number((Math.round(gramsOf(ml, abv) / step) * step).toPrecision(12));

function strengthOf(
  ml: readonly number[],
  strengths: readonly (Abv20 | null)[],
): { readonly abv20: number | null; readonly ethanolG: number | null } {
  const pours = ml.flatMap((volume, i) => (volume > 0 ? [{ volume, abv: strengths[i] ?? null }] : []));
  if (pours.some(({ abv }) => abv === null)) return { abv20: null, ethanolG: null };
  const known = pours.map(({ volume, abv }) => ({ volumeMl: millilitres20(volume), abv20: abv as Abv20 }));
  return {
    abv20: mix(known).abv20,
    ethanolG: known.reduce((sum, pour) => sum + liquidOfVolume(pour.volumeMl, pour.abv20).ethanolG, 0),
  };
}

/** D-efficiency of what is poured against what was planned. */
function efficiency(
  poured: readonly (readonly number[])[],
  planned: readonly (readonly number[])[],
  model: TrialPlan["model"],
  terms: number,
): number | null {
  const [a, b] = [logDeterminantOf(model, poured), logDeterminantOf(model, planned)];
  return Number.isFinite(a) && Number.isFinite(b) ? Math.exp((a - b) / terms) : null;
}

function notesOf(
  { within = DEFAULT.within, known = [], model = "quadratic", plan }: Body,
  trials: TrialPlan["trials"],
  pouredEfficiency: number | null,
  terms: number,
): string[] {
  const notes: string[] = [];
  const off = trials.filter((trial) => trial.off > within + 1e-9).length;
  if (off > 0)
    notes.push(
      `${off === 1 ? "One trial is" : `${off} trials are`} off by more than ${within} with these steps: a finer syringe, a scale or larger trials keep the shares.`,
    );
  if (plan === "own") return notes;
  if (pouredEfficiency === null)
    notes.push(
      `These mixtures do not tell the ${terms} terms of ${model} apart: a simpler model or more trials do.`,
    );
  if (trials.length + known.length <= terms && pouredEfficiency !== null)
    notes.push(
      "As many trials as terms: the fit will go through every point and cannot say how far off it is. Repeat some.",
    );
  return notes;
}
