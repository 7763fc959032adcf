import { mix } from "@partsproof/core/alcoholometry";
import { abv20, millilitres20 } from "@partsproof/core/quantity";
import { expect, test } from "vitest";
import { createClient } from "../../protocol/index.ts";
import { openReckoner } from "../../open-reckoner.ts";
import { refusalOf } from "../fixtures/refusal.ts";

const client = createClient(openReckoner(), "http://reckoner.test");
const at = (value: number) => ({ basis: "abv20", value }) as const;
const three = [
  { name: "Malt", strength: at(62.4) },
  { name: "Rye", strength: at(50) },
  { name: "Wheat", strength: at(58) },
];

test("a centroid of three in 20 mL with half steps: pours, strengths, what to draw of each bottle", async () => {
  const plan = await client("planTrials", {
    body: { parts: three, plan: "centroid", volumeMl: 20, syringeMl: 0.5 },
  });
  expect(plan.trials.length).toBe(7);
  const even = plan.trials[3];
  expect(even?.ml).toEqual([10, 10, 0]);
  expect(even?.abv20).toBeCloseTo(
    mix([
      { volumeMl: millilitres20(10), abv20: abv20(62.4) },
      { volumeMl: millilitres20(10), abv20: abv20(50) },
    ]).abv20,
    10,
  );
  const poured = plan.trials.reduce((sum, { totalMl }) => sum + totalMl, 0);
  expect(plan.pourList.reduce((sum, { ml }) => sum + ml, 0)).toBeCloseTo(poured, 9);
  expect(plan.totalMl).toBeCloseTo(poured, 9);
  expect(plan.overMl).toBeLessThan(2);
  expect(plan.pouredEfficiency ?? 0).toBeGreaterThan(0.97);
});

test("by weight the pours are whole steps of the scale", async () => {
  const plan = await client("planTrials", {
    body: { parts: three, plan: "D", volumeMl: 30, scaleG: 0.1, trials: 8 },
  });
  for (const { g } of plan.trials)
    for (const grams of g ?? [Number.NaN])
      expect(Math.abs(grams * 10 - Math.round(grams * 10))).toBeLessThan(1e-6);
});

test("known mixtures count, and the fewest are chosen where no number is given", async () => {
  const known = [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ];
  const plan = await client("planTrials", { body: { parts: three, plan: "D", known } });
  expect(plan.trials.length).toBe(3);
  // Beside the three alone the {3, 2} lattice's midpoints tell most (Kiefer 1961).
  for (const { shares } of plan.trials) expect(shares.toSorted((a, b) => b - a)).toEqual([0.5, 0.5, 0]);
  expect(plan.notes.join(" ")).toContain("Repeat some");
});

test("what cannot be planned is refused at its place", async () => {
  const parts = [{ name: "Malt" }, { name: "Rye" }];
  for (const [body, code, path] of [
    [
      {
        parts: [
          { name: "Malt", low: 0.6 },
          { name: "Rye", low: 0.6 },
        ],
        plan: "D",
      },
      "bounds_leave_nothing",
      ["parts"],
    ],
    [
      { parts: [{ name: "Malt", low: 0.2 }, { name: "Rye" }], plan: "centroid" },
      "plan_has_no_bounds",
      ["plan"],
    ],
    [{ parts: [parts[0], parts[0]], plan: "D" }, "name_twice", ["parts", 1, "name"]],
    [{ parts, plan: "D", scaleG: 0.1 }, "strength_missing", ["scaleG"]],
    [{ parts: three, plan: "D", trials: 4 }, "too_few_trials", ["trials"]],
    [{ parts, plan: "D", known: [[0.5, 0.2]] }, "shares_do_not_add_up", ["known", 0]],
    [
      { parts: [{ name: "Malt", low: 0.4, high: 0.4 }, { name: "Rye" }, { name: "Wheat" }], plan: "D" },
      "terms_not_separable",
      ["parts"],
    ],
  ] as const) {
    const [issue] = (await refusalOf(client("planTrials", { body: body as never }))).issues;
    expect(issue).toMatchObject({ code, path });
  }
});
