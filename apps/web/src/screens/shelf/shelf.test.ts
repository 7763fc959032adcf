import type { Vessel, Whiskey } from "@partsproof/house/protocol";
import { describe, expect, test } from "vitest";
import { groupShelf } from "./group-shelf.ts";
import { ledgerWords } from "./ledger-words.ts";
import { whatChanged } from "./what-changed.ts";
import { readTaste, tasteAsTyped, valueOf, withValue } from "./taste-typed.ts";
import { asTyped, BLANK, readWhiskey } from "./whiskey-typed.ts";

const whiskey: Whiskey = {
  id: "w1",
  version: 1,
  maker: "Tidewater",
  name: "Slack Water",
  release: "second",
  kind: "rye",
  strength: { basis: "proof60F", value: 124.8 },
  ageYears: 4.5,
  grains: [
    { grain: "rye", percent: 95 },
    { grain: "malted barley", percent: 5 },
  ],
  casks: [{ species: "American oak", held: "nothing" }],
  distilledAt: null,
  place: null,
  priceMinor: 6000,
  bottleMl: 700,
  availability: "gone",
  note: "",
  profile: null,
  abv20: 62.49,
  proof60F: 124.8,
  createdAt: "2026-01-01T00:00:00.000Z",
  updatedAt: "2026-01-01T00:00:00.000Z",
};
const vessel = (id: string, ml: number, more: Partial<Vessel> = {}): Vessel => ({
  id,
  version: 1,
  kind: "bottle",
  label: id,
  capacityMl: 700,
  whiskeyId: "w1",
  batchId: null,
  priceMinor: null,
  openedAt: null,
  sealed: true,
  createdAt: "2026-01-01T00:00:00.000Z",
  keptMl: 0,
  contents: {
    volumeMl: ml,
    massG: ml * 0.9,
    abv20: ml > 0 ? 62.5 : null,
    proof60F: null,
    composition: [],
    cost: { knownMinor: 0, unpricedShareOfMass: 0, perLitreMinor: null },
    youngestAge: { years: null, why: "" },
    grainShares: [],
    unknownGrainShare: 0,
    casks: [],
  },
  ...more,
});

describe("a whiskey as typed", () => {
  test("typed out and read back it is the same whiskey, its strength on the basis of the label", () => {
    const {
      id: _,
      version: __,
      abv20: ___,
      proof60F: ____,
      createdAt: _____,
      updatedAt: ______,
      profile: _______,
      ...facts
    } = whiskey;
    expect(readWhiskey(asTyped(whiskey, "USD"), "USD")).toEqual({ ok: true, facts });
  });

  test("everything that cannot be read is told at once, with the path of its field", () => {
    const read = readWhiskey(
      {
        ...BLANK,
        strength: "140%",
        age: "old",
        price: "cheap",
        bottle: "big",
        grains: [{ grain: "", percent: "x" }],
      },
      "USD",
    );
    expect(read.ok ? [] : read.issues.map(({ path }) => path.join("/"))).toEqual([
      "maker",
      "name",
      "strength",
      "bottleMl",
      "priceMinor",
      "ageYears",
      "grains/0/percent",
      "grains/0/grain",
    ]);
  });
});

describe("the shelf", () => {
  const other = { ...whiskey, id: "w2", name: "Dry Dock", kind: "malt" as const };
  const vessels = [
    vessel("full", 700),
    vessel("open", 300, { sealed: false, openedAt: "2026-02-01T00:00:00.000Z" }),
    vessel("empty", 0, { sealed: false }),
    vessel("jug", 0, { kind: "jug", whiskeyId: null, label: "Jug" }),
  ];

  test("opened bottles come first and empty ones are left out", () => {
    const { groups, others } = groupShelf([whiskey, other], vessels, "on the shelf", "");
    expect(groups.map(({ kind }) => kind)).toEqual(["rye"]);
    expect(groups[0]?.rows[0]?.bottles.map(({ id }) => id)).toEqual(["open", "full"]);
    expect(groups[0]?.rows[0]?.leftMl).toBe(1000);
    expect(others.map(({ id }) => id)).toEqual(["jug"]);
  });

  test("all shows whiskeys without a bottle, open only what is opened, and search looks in every name", () => {
    expect(groupShelf([whiskey, other], vessels, "all", "").groups.map(({ kind }) => kind)).toEqual([
      "malt",
      "rye",
    ]);
    const open = groupShelf([whiskey, other], vessels, "open", "");
    expect(open.groups[0]?.rows[0]?.bottles.map(({ id }) => id)).toEqual(["open"]);
    expect(groupShelf([whiskey, other], vessels, "all", "dry").groups).toHaveLength(1);
  });
});

test("a change made meanwhile is told in words, and what is the same is not", () => {
  const theirs = { ...whiskey, version: 2, priceMinor: 7000, casks: [] };
  expect(whatChanged(whiskey, theirs, "USD")).toEqual([
    { what: "casks", before: "virgin American oak", after: "not known" },
    { what: "price", before: "$60.00", after: "$70.00" },
  ]);
});

test("a line of the ledger is told from the vessel's side", () => {
  const line = {
    id: "t",
    seq: 1,
    at: "2026-01-01T00:00:00.000Z",
    from: { kind: "vessel", vesselId: "a" },
    to: { kind: "outside", name: "glass" },
    amount: { kind: "volume", ml: 30 },
    whiskeyId: null,
    batchId: null,
    flightId: null,
    note: "",
    undoneAt: null,
  } as const;
  const labels = new Map([["a", "Jug"]]);
  expect(ledgerWords(line, "a", labels)).toBe("30\u00a0mL out to a glass");
  expect(ledgerWords({ ...line, to: { kind: "vessel", vesselId: "b" } }, "b", labels)).toBe(
    "30\u00a0mL in from Jug",
  );
});

describe("what a whiskey tastes of", () => {
  const profile = {
    tastedAt: { basis: "proof60F" as const, value: 80 },
    intensities: { "smoke.smoke": 0, "sweet.honey": null, "nut.nut": { value: 4, sd: 1 } },
  };

  test("typed out and read back it is the same: not known stays that, and is no zero", () => {
    expect(readTaste(tasteAsTyped(profile))).toEqual({ ok: true, profile });
    expect(readTaste(tasteAsTyped(null))).toEqual({ ok: true, profile: null });
    expect([valueOf(undefined), valueOf(null), valueOf(0)]).toEqual([null, null, 0]);
  });

  test("a dot that is moved says a number, keeps its spread, and can be taken back to not said", () => {
    const typed = withValue(withValue(tasteAsTyped(profile), "nut.nut", 6), "sweet.honey", 0);
    expect(typed.intensities).toEqual({ "smoke.smoke": 0, "sweet.honey": 0, "nut.nut": { value: 6, sd: 1 } });
    const back = ["smoke.smoke", "sweet.honey", "nut.nut"].reduce(
      (now, id) => withValue(now, id, null),
      typed,
    );
    expect(back.intensities).toEqual({});
    expect(readTaste(back)).toEqual({ ok: true, profile: null });
  });

  test("a strength that cannot be read is told with its field", () => {
    const read = readTaste({ ...tasteAsTyped(profile), tastedAt: "weak" });
    expect(read.ok ? [] : read.issues.map(({ path }) => path)).toEqual([["profile", "tastedAt"]]);
  });
});
