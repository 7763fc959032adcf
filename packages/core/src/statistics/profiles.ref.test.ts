import fc from "fast-check";
import { expect, test } from "vitest";
import { symmetricEigen } from "../numeric/index.ts";
import agreement from "./agreement.published.json" with { type: "json" };
import {
  cochranQ,
  distanceTo,
  fillNormal,
  inEllipse,
  intraclass,
  itemMap,
  meanInterval,
  principalComponents,
  repeatableRng,
  rvCoefficient,
  signFlipTest,
} from "./index.ts";
import oracle from "./profiles.oracle.json" with { type: "json" };

const long = process.env["PARTSPROOF_LONG"] === "1";

const farthest = (got: readonly number[], expected: readonly number[]): number =>
  Math.max(...got.map((x, i) => Math.abs(x - (expected[i] ?? Number.NaN))));

test("V1 the six intraclass correlations, F tests and intervals: Shrout and Fleiss 1979, figures by R", () => {
  const found = intraclass(agreement.icc.data);
  let off = 0;
  for (const printed of agreement.icc.table) {
    const mine = found.find(({ form }) => form === printed.type);
    off = Math.max(
      off,
      farthest(
        [mine?.value ?? Number.NaN, mine?.p ?? 0, mine?.interval.low ?? 0, mine?.interval.high ?? 0],
        [printed.ICC, printed.p, printed["lower bound"], printed["upper bound"]],
      ),
    );
  }
  console.log(`intraclass correlations against R: off by ${off.toExponential(1)} at most`);
  expect(off).toBeLessThan(1e-9);
  expect(() =>
    intraclass([
      [1, 1],
      [2, 2],
    ]),
  ).toThrow("intraclass requires judges that are not all of one mind");
  expect(() => intraclass([[1, 2]])).toThrow("intraclass requires 2 rows or more, got 1");
});

test("V2 Cochran's Q: Conover's forecasts, Q 2.8, chi-square p by R; exact p from the law of Friedman with ties", () => {
  const said = agreement.cochran.data.map((row) => row.map(Boolean));
  const rough = cochranQ(said, 0);
  if (!rough.ok) throw new Error(rough.code);
  expect(rough.q).toBeCloseTo(agreement.cochran.result.Q, 10);
  expect(Math.abs(rough.p - agreement.cochran.result.p)).toBeLessThan(1e-10);
  const off = [rough.q - agreement.cochran.result.Q, rough.p - agreement.cochran.result.p].map(Math.abs);
  console.log(`Cochran's Q and p against R: off by ${off.map((x) => x.toExponential(1)).join(", ")}`);
  const exact = cochranQ(said);
  expect(exact).toMatchObject({ ok: true, method: "exact" });
  // Two items are McNemar's test: 5 against 1 of 6 who differed, two-sided 14/64.
  const pairs = [...Array.from({ length: 5 }, () => [true, false]), [false, true], [true, true]];
  expect(cochranQ(pairs)).toMatchObject({ ok: true, p: 14 / 64 });
  expect(cochranQ([[true, true]])).toEqual({ ok: false, code: "nobody_told_any_apart" });
});

test("V3 eigenvalues and vectors agree with numpy", () => {
  let off = 0;
  for (const { matrix, values, vectors } of oracle.eigen) {
    const found = symmetricEigen(matrix);
    off = Math.max(off, farthest(found.values, values));
    found.vectors.forEach((vector, i) => {
      const along = vector.reduce((sum, x, j) => sum + x * (vectors[i]?.[j] ?? 0), 0);
      off = Math.max(off, Math.abs(Math.abs(along) - 1));
    });
  }
  console.log(`eigenvalues and vectors against numpy: off by ${off.toExponential(1)} at most`);
  expect(off).toBeLessThan(1e-12);
  expect(() => symmetricEigen([[1, 2]])).toThrow("symmetricEigen requires 1 numbers in row 0, got 2");
});

test("V3 vectors are orthonormal and put the matrix together again", () => {
  fc.assert(
    fc.property(
      fc
        .integer({ min: 1, max: 7 })
        .chain((n) =>
          fc.array(
            fc.array(fc.double({ min: -100, max: 100, noNaN: true }), { minLength: n, maxLength: n }),
            { minLength: n, maxLength: n },
          ),
        ),
      (raw) => {
        const matrix = raw.map((row, i) => row.map((_, j) => raw[Math.max(i, j)]?.[Math.min(i, j)] ?? 0));
        const { values, vectors } = symmetricEigen(matrix);
        const size = Math.max(1, ...matrix.flat().map(Math.abs));
        matrix.forEach((row, i) =>
          row.forEach((x, j) => {
            const again = values.reduce(
              (sum, value, k) => sum + value * (vectors[k]?.[i] ?? 0) * (vectors[k]?.[j] ?? 0),
              0,
            );
            expect(Math.abs(again - x)).toBeLessThan(1e-11 * size);
            const unit = vectors.reduce((sum, vector) => sum + (vector[i] ?? 0) * (vector[j] ?? 0), 0);
            expect(Math.abs(unit - Number(i === j))).toBeLessThan(1e-12);
          }),
        );
        values.slice(1).forEach((value, i) => expect(value).toBeLessThanOrEqual(values[i] ?? 0));
      },
    ),
  );
});

test("V4 principal components agree with numpy's singular values", () => {
  const { table, variances, shares, absScores } = oracle.pca;
  const found = principalComponents(table, 4);
  const off = Math.max(
    farthest(found.variances, variances),
    farthest(found.shares, shares),
    ...found.scores.map((row, i) => farthest(row.map(Math.abs), absScores[i] ?? [])),
  );
  console.log(`principal components against numpy: off by ${off.toExponential(1)} at most`);
  expect(off).toBeLessThan(1e-10);
  expect(() =>
    principalComponents(
      [
        [1, 1],
        [1, 1],
      ],
      1,
    ),
  ).toThrow("requires items that differ, got equal rows");
  expect(() => principalComponents(table, 5)).toThrow("requires 1 to 4 components, got 5");
});

test("V5 RV, sign flips and the mean's interval agree with numpy and scipy", () => {
  const { one, other, rv, byChance, p } = oracle.rv;
  const found = rvCoefficient(one, other, repeatableRng(1));
  const off = farthest([found.rv, found.byChance, found.p], [rv, byChance, p]);
  console.log(`RV, its value by chance and exact p against numpy: off by ${off.toExponential(1)} at most`);
  expect(off).toBeLessThan(1e-12);
  expect(found.method).toBe("exact");
  // The same picture turned and stretched has everything in common.
  expect(
    rvCoefficient(
      one,
      one.map(([x = 0, y = 0, z = 0]) => [-2 * y, 2 * x, 2 * z]),
      repeatableRng(1),
    ).rv,
  ).toBeCloseTo(1, 12);
  expect(signFlipTest(oracle.flips.differences).p).toBeCloseTo(oracle.flips.p, 12);
  expect(signFlipTest([0, 0]).p).toBe(1);
  expect(signFlipTest(Array.from({ length: 25 }, (_, i) => i - 10)).method).toBe("student");
  const { values, level, low, high } = oracle.mean;
  const { interval } = meanInterval(values, level);
  expect(farthest([interval?.low ?? 0, interval?.high ?? 0], [low, high])).toBeLessThan(1e-10);
  expect(meanInterval([4])).toEqual({ mean: 4, sd: null, interval: null, count: 1 });
  expect(() => meanInterval([])).toThrow("at least 1 value, got 0");
});

/** Scores of one judge on `means`, with a normal error of its own on each. */
function scored(means: readonly number[], sd: number, rng: ReturnType<typeof repeatableRng>): number[] {
  const noise = new Float64Array(means.length);
  fillNormal(noise, rng);
  return means.map((mean, i) => mean + sd * (noise[i] ?? 0));
}

test("V6 coverage at the sizes people have: means, distance to the target, places on the map", () => {
  const rng = repeatableRng(18);
  const runs = long ? 2000 : 60;
  const rows: string[] = [];
  for (const judges of [3, 6, 12]) {
    let [mean, normal, drawn, inside, points, over] = [0, 0, 0, 0, 0, 0];
    for (let run = 0; run < runs; run += 1) {
      // Differences to the target on 8 attributes: some, or none, on a scale of 0 to 10.
      const truth = Array.from(
        { length: 8 },
        (_, a) => (run % 3 === 0 ? 0 : [1.5, -1, 0.5, 0, 0, 0.8, 0, -0.3][a]) ?? 0,
      );
      const differences = Array.from({ length: judges }, () => scored(truth, 1.2, rng));
      const distance = Math.sqrt(truth.reduce((sum, x) => sum + x * x, 0) / 8);
      const found = distanceTo(differences, rng);
      if (found.interval.low <= distance && distance <= found.interval.high) normal += 1;
      if (found.bootstrap.low <= distance && distance <= found.bootstrap.high) drawn += 1;
      const { interval } = meanInterval(differences.map((row) => row[0] ?? 0));
      if (interval !== null && interval.low <= (truth[0] ?? 0) && (truth[0] ?? 0) <= interval.high) mean += 1;
      if (signFlipTest(differences.map((row) => row[3] ?? 0)).p <= 0.05) over += 1;
      if (run % (long ? 10 : 20) !== 0) continue;
      // Four glasses, five attributes: their true places are the true profiles on the found axes.
      const glasses = [
        [7, 2, 4, 5, 1],
        [3, 6, 4, 2, 1],
        [5, 4, 7, 3, 2],
        [6, 3, 2, 6, 4],
      ];
      const map = itemMap(
        Array.from({ length: judges }, () => glasses.map((glass) => scored(glass, 1.2, rng))),
        rng,
      );
      const centre = [0, 1, 2, 3, 4].map((a) => glasses.reduce((sum, glass) => sum + (glass[a] ?? 0), 0) / 4);
      glasses.forEach((glass, i) => {
        const [x = 0, y = 0] = map.loadings.map((loading) =>
          loading.reduce((sum, weight, a) => sum + weight * ((glass[a] ?? 0) - (centre[a] ?? 0)), 0),
        );
        points += 1;
        const ellipse = map.ellipses[i];
        if (ellipse !== undefined && inEllipse(ellipse, [x, y])) inside += 1;
      });
    }
    const per = (times: number, of = runs): string => `${((100 * times) / of).toFixed(1)} %`;
    rows.push(
      `${judges} judges: mean ${per(mean)}, distance ${per(normal)} (bootstrap ${per(drawn)}), ellipse ${per(inside, points)}, exact sign flips find what is not there in ${per(over)}`,
    );
    expect(mean / runs).toBeGreaterThan(0.85);
    expect(over / runs).toBeLessThan(0.05 + 4 * Math.sqrt(0.0475 / runs));
  }
  console.log(`LONG profiles | ${runs} tables each, 95 % | ${rows.join("; ")}`);
}, 300_000);

test("V7 the map: turning all attributes changes nothing, a map of no scatter has points for ellipses", () => {
  const glasses = [
    [7, 2, 4],
    [3, 6, 4],
    [5, 4, 7],
  ];
  const map = itemMap([glasses, glasses, glasses], repeatableRng(2));
  map.ellipses.forEach(({ axes, centre }, i) => {
    expect(Math.max(...axes)).toBeLessThan(1e-6);
    expect(centre[0]).toBeCloseTo(map.scores[i]?.[0] ?? 0, 9);
  });
  expect(() => itemMap([glasses], repeatableRng(2))).toThrow("itemMap requires 2 judges or more, got 1");
  expect(() => itemMap([glasses, glasses.slice(1)], repeatableRng(2))).toThrow("judge 1");
  expect(
    distanceTo(
      [
        [1, 0],
        [1, 0],
      ],
      repeatableRng(3),
    ).distance,
  ).toBeCloseTo(Math.SQRT1_2, 12);
  expect(() => distanceTo([[1, 0]], repeatableRng(3))).toThrow("distanceTo requires 2 rows or more, got 1");
});
