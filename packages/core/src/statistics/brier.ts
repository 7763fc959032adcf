/** A statement made with a confidence, and whether it was right. */
export interface Forecast {
  readonly confidence: number;
  readonly right: boolean;
}

export interface BrierScore {
  /** Mean squared distance of confidence and outcome: 0 best, 1 worst. */
  readonly score: number;
  /** What always saying the share that was right would score. */
  readonly baseline: number;
  /** 1 − score/baseline: above 0, the confidence tells right from wrong; null when all or none were right. */
  readonly skill: number | null;
  /** Mean confidence less the share right: above 0 overconfident. */
  readonly overconfidence: number;
  /** By confidence said: how often it was right. */
  readonly groups: readonly { readonly confidence: number; readonly right: number; readonly of: number }[];
  /** score = reliability − resolution + baseline (Murphy), over those groups. */
  readonly reliability: number;
  readonly resolution: number;
}

/**
 * How well confidence fits what came true: Brier's score with Murphy's parts, grouped by the confidence said.
 *
 * Exact arithmetic of the data; with a dozen statements it describes them and proves nothing.
 *
 * Source: Brier, Monthly Weather Review 78 (1950) 1; Murphy, J. Appl. Meteor. 12 (1973) 595 (from memory).
 *
 * @throws RangeError when there is no statement or a confidence is not from 0 to 1
 * @example brier([{ confidence: 0.9, right: true }, { confidence: 0.6, right: false }]).score // 0.185
 */
export function brier(forecasts: readonly Forecast[]): BrierScore {
  const n = forecasts.length;
  if (n === 0) throw new RangeError("brier requires at least 1 statement, got 0");
  const groups = new Map<number, { confidence: number; right: number; of: number }>();
  for (const { confidence, right } of forecasts) {
    if (!(confidence >= 0 && confidence <= 1))
      throw new RangeError(`brier requires a confidence from 0 to 1, got ${confidence}`);
    const group = groups.get(confidence) ?? { confidence, right: 0, of: 0 };
    groups.set(confidence, { confidence, right: group.right + Number(right), of: group.of + 1 });
  }
  const mean = (f: (one: Forecast) => number): number => forecasts.reduce((sum, one) => sum + f(one), 0) / n;
  const share = mean(({ right }) => Number(right));
  const score = mean(({ confidence, right }) => (confidence - Number(right)) ** 2);
  const baseline = share * (1 - share);
  const all = [...groups.values()].toSorted((a, b) => a.confidence - b.confidence);
  const over = (f: (confidence: number, right: number) => number): number =>
    all.reduce((sum, { confidence, right, of }) => sum + of * f(confidence, right / of), 0) / n;
  return {
    score,
    baseline,
    skill: baseline === 0 ? null : 1 - score / baseline,
    overconfidence: mean(({ confidence }) => confidence) - share,
    groups: all,
    reliability: over((confidence, right) => (confidence - right) ** 2),
    resolution: over((_, right) => (right - share) ** 2),
  };
}
