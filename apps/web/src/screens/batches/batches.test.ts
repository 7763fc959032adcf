import type { BatchPlan, Contents, Vessel } from "@partsproof/house/protocol";
import { describe, expect, test } from "vitest";
import { asPoured } from "./as-poured.ts";
import { type PouredRow, readRows, rowOfPour, rowsAsWeighed, rowsOf } from "./poured-rows.ts";
import { resolveRows } from "./resolve-rows.ts";
import { restOf } from "./rest-of.ts";

const contents: Contents = {
  volumeMl: 700,
  massG: 700 * 0.94,
  abv20: 46,
  proof60F: 92,
  composition: [{ liquidId: "w", label: "w", shareOfAlcohol: 1, shareOfMass: 1 }],
  cost: { knownMinor: 7000, unpricedShareOfMass: 0, perLitreMinor: 10_000 },
  youngestAge: { years: null, why: "" },
  grainShares: [],
  unknownGrainShare: 1,
  casks: [],
};
const pour = (from: BatchPlan["steps"][number]["pours"][number]["from"], ml: number) => ({
  from,
  amount: { kind: "volume" as const, ml },
  label: from.kind,
  ml,
  g: ml * 0.94,
});
const plan: BatchPlan = {
  recipeId: "r",
  recipeNumber: 1,
  steps: [
    { label: "water", slot: null, pours: [pour({ kind: "water" }, 50)], ml: 50, g: 50, shortMl: 0 },
    {
      label: "w",
      slot: 0,
      pours: [pour({ kind: "vessel", vesselId: "v" }, 466.123456)],
      ml: 466.123456,
      g: 438,
      shortMl: 0,
    },
  ],
  result: contents,
  issues: [],
};

describe("what was really poured", () => {
  test("water comes last, whatever the plan's order", () => {
    expect(rowsOf(plan).map(({ from }) => from.kind)).toEqual(["vessel", "water"]);
  });

  test("an amount left as planned is sent as planned, not as it was rounded for reading", () => {
    const read = readRows(rowsOf(plan), "g");
    expect(read.ok && read.pours[0]?.amount).toEqual({ kind: "volume", ml: 466.123456 });
  });

  test("what a scale said stands in the rows of the plan; nothing said is nothing poured; what was not planned is added", () => {
    const weighed = [
      { from: { kind: "vessel" as const, vesselId: "v" }, label: "w", massG: 437.216 },
      { from: { kind: "vessel" as const, vesselId: "other" }, label: "other", massG: 12 },
    ];
    const rows = rowsAsWeighed(rowsOf(plan), weighed);
    expect(rows.map(({ typed }) => typed)).toEqual(["437.22", "", "12.00"]);
    const read = readRows(rows, "g");
    expect(read.ok && read.pours.map(({ amount }) => amount)).toEqual([
      { kind: "mass", g: 437.22 },
      { kind: "mass", g: 12 },
    ]);
  });

  test("a bare number is in the unit shown, a unit that is written wins, and nothing poured is not sent", () => {
    const [first, second] = rowsOf(plan) as [PouredRow, PouredRow];
    const amounts = (a: string, b: string) => {
      const read = readRows(
        [
          { ...first, typed: a },
          { ...second, typed: b },
        ],
        "g",
      );
      return read.ok ? read.pours.map(({ amount }) => amount) : read.issues.map(({ path }) => path.join("/"));
    };
    expect(amounts("400", "20 ml")).toEqual([
      { kind: "mass", g: 400 },
      { kind: "volume", ml: 20 },
    ]);
    expect(amounts("400", "")).toEqual([{ kind: "mass", g: 400 }]);
    expect(amounts("0", "a splash")).toEqual(["rows/1/amount"]);
  });

  test("an issue of the second pour sent belongs to the third row when the first was not poured", () => {
    const [first, second] = rowsOf(plan) as [PouredRow, PouredRow];
    const rows = [{ ...first, typed: "" }, { ...first, id: "again" }, second];
    expect(rowOfPour(rows, "mL", 1)).toBe(2);
  });

  test("the same whiskey as poured keeps its strength, by volume and by mass, and water thins it", () => {
    const vessels = new Map([["v", { contents } as Vessel]]);
    const from = { kind: "vessel" as const, vesselId: "v" };
    const by = (
      amount: Parameters<typeof asPoured>[0][number]["amount"],
      more: Parameters<typeof asPoured>[0] = [],
    ) => asPoured([{ from, amount }, ...more], vessels, new Map())?.result.abv20 ?? Number.NaN;
    expect(by({ kind: "volume", ml: 300 })).toBeCloseTo(46, 9);
    expect(by({ kind: "mass", g: 300 })).toBeCloseTo(46, 9);
    const water = { from: { kind: "water" as const }, amount: { kind: "volume" as const, ml: 45 } };
    expect(by({ kind: "volume", ml: 300 }, [water])).toBeCloseTo(40, 0);
    expect(
      asPoured(
        [{ from: { kind: "vessel", vesselId: "x" }, amount: { kind: "volume", ml: 1 } }],
        vessels,
        new Map(),
      ),
    ).toBeNull();
  });
});

describe("a measured pour that went too far", () => {
  const vessel = (id: string, ml: number) => ({
    ...pour({ kind: "vessel", vesselId: id }, ml),
    label: id,
  });
  const twoToOne: BatchPlan = {
    ...plan,
    steps: [
      { label: "a", slot: 0, pours: [vessel("a", 100)], ml: 100, g: 94, shortMl: 0 },
      { label: "b", slot: 1, pours: [vessel("b", 50)], ml: 50, g: 47, shortMl: 0 },
    ],
  };
  const vessels = new Map(["a", "b"].map((id) => [id, { contents, capacityMl: 700 } as Vessel]));
  const typed = (first: string | null, second: string | null) =>
    rowsOf(twoToOne).map((row, i) => ({ ...row, typed: i === 0 ? first : second }));

  test("the rest grows with it: 110 of the first take 55 of the second (core's own example)", () => {
    const solved = resolveRows(twoToOne, typed("110", null), "mL", vessels, null);
    expect(solved?.rows.map(({ planned }) => planned?.ml)).toEqual([100, expect.closeTo(55, 9)]);
    expect(solved).toMatchObject({ ratioKept: true, strengthKept: true });
    expect(resolveRows(twoToOne, solved?.rows ?? [], "mL", vessels, null), "reckoned already").toBeNull();
  });

  test("no more than the vessel holds, and it says so", () => {
    const solved = resolveRows(twoToOne, typed("110", null), "mL", vessels, 158);
    expect(solved?.rows[1]?.planned?.ml).toBeCloseTo(48, 1);
    expect(solved?.ratioKept).toBe(false);
  });

  test("nothing to reckon where nothing went too far, or nothing is left to pour", () => {
    expect(resolveRows(twoToOne, typed("99", null), "mL", vessels, null)).toBeNull();
    expect(resolveRows(twoToOne, typed("110", "50"), "mL", vessels, null)).toBeNull();
  });
});

test("R5 rest counts whole days from the making, and no further than asked", () => {
  const batch = { madeAt: "2026-11-01T20:00:00.000Z", restDays: 28, restDueAt: "2026-11-29T20:00:00.000Z" };
  const at = (day: string) => restOf(batch, new Date(day).getTime())?.done;
  expect([
    at("2026-11-01T20:00:00.000Z"),
    at("2026-11-13T19:59:00.000Z"),
    at("2027-01-01T00:00:00.000Z"),
  ]).toEqual([0, 11, 28]);
  expect(restOf({ ...batch, restDays: null, restDueAt: null }, 0)).toBeNull();
});
