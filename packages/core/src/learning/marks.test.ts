import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type History, learnTaste, type MarkSheet, marksOrOrder, nextFlight, whatIf } from "./index.ts";

const whiskey = (id: string, smoke: number, sweet: number) => ({
  id,
  profile: { smoke: { value: smoke, sd: 0.5 }, sweet: { value: sweet, sd: 0.5 } },
});
const whiskeys = [whiskey("malt", 8, 1), whiskey("rye", 4, 4), whiskey("wheat", 0, 8)];
const tried = [
  { id: "a", parts: { malt: 1 } },
  { id: "b", parts: { malt: 1, wheat: 1 } },
  { id: "c", parts: { wheat: 2, rye: 1 } },
  { id: "d", parts: { rye: 1 } },
];
const WANTED = { glasses: 4, maxParts: 4, start: 1 };
const sheet = (marks: readonly number[], more: Partial<MarkSheet> = {}): MarkSheet => ({
  marks: marks.map((mark, i) => ({ id: "abcd"[i] as string, mark })),
  ...more,
});
const of = (...marks: readonly MarkSheet[]): History => ({ whiskeys, tried, rankings: [], marks });
const told = (history: History) => nextFlight(history, WANTED).posterior;
const means = (history: History): number[] => told(history).map(({ mean }) => mean);

describe("L13 what marks say", () => {
  test("more is better, and farther apart is more surely so", () => {
    const better = (marks: readonly number[]): number =>
      whatIf(
        learnTaste(
          of(...[1, 2].map(() => ({ marks: marks.map((mark, i) => ({ id: "abd"[i] as string, mark })) }))),
          { shape: { scale: 2, length: 0.8, curve: 0 } },
        ),
        [{ malt: 1, wheat: 1 }],
        { malt: 1 },
      )[0]?.better ?? 0;
    const near = better([50, 53, 80]);
    const far = better([50, 78, 80]);
    expect(far).toBeGreaterThan(0.6);
    expect(far).toBeGreaterThan(near + 0.1);
  });

  test("adding to a sheet's marks says nothing; stretching them nothing beyond their step", () => {
    const marks = [41, 63, 52, 77];
    const plain = means(of(sheet(marks)));
    const moved = means(of(sheet(marks.map((mark) => mark + 17))));
    const tenfold = means(of(sheet(marks.map((mark) => 10 * mark))));
    for (const [i, mean] of plain.entries()) {
      expect(moved[i]).toBeCloseTo(mean, 9);
      expect(tenfold[i]).toBeCloseTo(mean, 9);
    }
    // Of one taster and scale, each sheet has a level of its own.
    const two = (by: number): number[] => means(of(sheet(marks), sheet([60 + by, 71 + by, 40 + by])));
    for (const [i, mean] of two(0).entries()) expect(two(9)[i]).toBeCloseTo(mean, 9);
  });

  test("who marks in tens and who marks in ones are told about the same", () => {
    const [fine, coarse] = [means(of(sheet([41, 61, 51, 81]))), means(of(sheet([40, 60, 50, 80])))];
    for (const [i, mean] of fine.entries()) expect(Math.abs((coarse[i] ?? 0) - mean)).toBeLessThan(0.5);
  });

  test("a mark at the end of the scale may stand for more", () => {
    const marks = [100, 60, 40, 20];
    const [open, ended] = [told(of(sheet(marks))), told(of(sheet(marks, { scale: [0, 100] })))];
    expect(ended[0]?.sd).toBeGreaterThan(open[0]?.sd ?? 0);
    expect(ended[0]?.mean).toBeGreaterThan(open[0]?.mean ?? 0);
  });

  test("the target stands at the top where marks are of closeness, though nobody marked it", () => {
    const own = { scale: [0, 10] as const };
    const without = told(of(sheet([6, 7, 3], own)));
    const topped = told(of(sheet([6, 7, 3], { ...own, top: "d" })));
    expect(topped[3]?.mean).toBeGreaterThan((without[3]?.mean ?? 0) + 0.5);
    // Marked, it is where it was marked.
    expect(told(of(sheet([6, 7, 3, 5], { ...own, top: "d" })))).toEqual(told(of(sheet([6, 7, 3, 5], own))));
    expect(nextFlight(of(sheet([6], { ...own, top: "d" })), WANTED).counted).toEqual({
      rankings: 0,
      marks: 1,
    });
  });

  test("the order of sheets and of marks says nothing", () => {
    const sheets = [
      sheet([41, 63, 52, 77], { taster: "Ilka", scale: [0, 100] }),
      sheet([5, 8, 7], { taster: "Jorren", scale: [0, 10] }),
      sheet([60, 58], { taster: "Ilka", scale: [0, 100] }),
    ];
    const turned = sheets.toReversed().map((one) => ({ ...one, marks: one.marks.toReversed() }));
    expect(told(of(...turned))).toEqual(told(of(...sheets)));
  });

  test.each<[string, MarkSheet[]]>([
    ["one mark", [sheet([50])]],
    ["all equal", [sheet([70, 70, 70, 70]), sheet([70, 70])]],
    ["all at the top", [sheet([10, 10, 10, 10], { scale: [0, 10] })]],
    ["both ends and nothing between", [sheet([0, 10, 0, 10], { scale: [0, 10] })]],
    ["hundreds", Array.from({ length: 90 }, (_, n) => sheet([n % 7, 5 + (n % 3), 4, 9 - (n % 5)]))],
    ["odd numbers", [sheet([1 / 3, Math.PI, -1e6, 1e6])]],
    ["one recipe poured twice", [{ marks: ["a", "a"].map((id, i) => ({ id, mark: 5 + i })) }]],
  ])("L3 %s: finite numbers", (_, sheets) => {
    const { posterior, glasses, stop } = nextFlight(of(...sheets), WANTED);
    for (const { mean, sd, pBest } of posterior) expect([mean, sd, pBest].every(Number.isFinite)).toBe(true);
    expect(glasses).toHaveLength(4);
    expect(stop.why).not.toContain("NaN");
  });

  test("any marks give finite numbers", { timeout: 120_000 }, () => {
    const marked = fc.array(fc.integer({ min: 0, max: 10 }), { minLength: 1, maxLength: 4 });
    fc.assert(
      fc.property(fc.array(marked, { minLength: 1, maxLength: 4 }), fc.boolean(), (sheets, ended) => {
        const scale = ended ? { scale: [0, 10] as const } : {};
        const history = of(...sheets.map((marks, s) => sheet(marks, { taster: `t${s % 2}`, ...scale })));
        for (const { mean, sd } of told(history)) expect([mean, sd].every(Number.isFinite)).toBe(true);
      }),
      { numRuns: process.env["PARTSPROOF_LONG"] === "1" ? 300 : 10 },
    );
  });

  test("L8 what is outside the domain throws", () => {
    expect(() => told(of({ marks: [{ id: "x", mark: 1 }] }))).toThrow("got x");
    expect(() => told(of(sheet([11, 2], { scale: [0, 10] })))).toThrow("a number from 0 to 10, got 11");
    expect(() => told(of(sheet([1, 2], { scale: [5, 5] })))).toThrow("got 5, 5");
    expect(() => told(of(sheet([1, Number.NaN])))).toThrow("got NaN");
  });
});

describe("of one sheet its marks or its order, never both", () => {
  const marks = (own: Record<string, number>) => Object.entries(own).map(([id, mark]) => ({ id, mark }));
  test.each<[string, string[][], Record<string, number>, "marks" | "order"]>([
    ["marks of all", [["a"], ["b"], ["c"]], { a: 80, b: 70, c: 60 }, "marks"],
    ["a glass without", [["a"], ["b"], ["c"]], { a: 80, b: 70 }, "order"],
    ["half of them told apart", [["a"], ["b"], ["c"], ["d"]], { a: 80, b: 80, c: 70, d: 70 }, "marks"],
    ["one mark for all, and an order", [["a"], ["b"], ["c"]], { a: 80, b: 80, c: 80 }, "order"],
    ["more marked than put in order", [["a"], ["b"]], { a: 80, b: 70, c: 60 }, "marks"],
  ])("%s", (_, order, own, taken) => {
    expect(marksOrOrder(order, marks(own))).toBe(taken);
  });
});
