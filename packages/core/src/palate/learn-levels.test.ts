import { describe, expect, test } from "vitest";
import { heldLevel, labelLevel, learnLevels, mixLevels, teachesMost, whyItTeaches } from "./index.ts";
import type { LearnedLevels, Particular, TableNote } from "./index.ts";

const label = { ageYears: 12, abv: 46, kind: "malt", grains: null, casks: null };
const whiskeys = ["malt", "rye", "wheat"].map((id) => ({ id, label }));
const note = (taster: string, parts: TableNote["parts"], mean: number, sd = 1): TableNote => ({
  taster,
  parts,
  says: { "smoke.smoke": { mean, sd } },
});
const level = ({ whiskeys: ids, attributes }: LearnedLevels, id: string) => {
  const [smoke] = attributes;
  const i = ids.indexOf(id);
  return {
    mean: smoke?.means[i] ?? Number.NaN,
    sd: Math.sqrt(smoke?.covariance[i * ids.length + i] ?? Number.NaN),
  };
};

/** Nothing particular to any whiskey: ids as names. */
const nothing: Particular = {
  whiskey: (id) => id,
  attribute: (id) => id,
  toldOf: () => ({ alone: 0, inMixes: 0, written: false }),
  recipes: () => [],
  level: 0.95,
};

describe("what labels, notes and mixes teach", () => {
  test("P1 a note pulls a level from what the label says towards what it says, and leaves less doubt", () => {
    const learned = learnLevels(whiskeys, [note("a", { malt: 1 }, 7)]);
    const before = labelLevel(label, "smoke.smoke");
    const malt = level(learned, "malt");
    expect(malt.mean).toBeGreaterThan(before.mean + 2);
    expect(malt.mean).toBeLessThan(7);
    expect(malt.sd).toBeLessThan(before.sd);
    // The others are believed a little smokier, for the label says the same of them: no more than that.
    expect(level(learned, "rye").mean).toBeLessThan(malt.mean);
    expect(level(learned, "rye").sd).toBeGreaterThan(1.5 * malt.sd);
  });

  test("P1 a smoky mix teaches that its unknown part is smoky, the more the larger that part is", () => {
    const of = (parts: TableNote["parts"]) =>
      level(
        learnLevels(whiskeys, [
          ...[0, 1, 2].map(() => note("a", { malt: 1 }, 1)),
          ...[0, 1, 2].map(() => note("a", parts, 6)),
        ]),
        "rye",
      );
    expect(of({ malt: 1, rye: 3 }).mean).toBeGreaterThan(4.5);
    expect(of({ malt: 1, rye: 3 }).sd).toBeLessThan(of({ malt: 3, rye: 1 }).sd);
  });

  test("P3 one taster is the table; of two who say the same of everything, one higher, half is each one's", () => {
    const alone = learnLevels(whiskeys, [note("a", { malt: 1 }, 7), note("a", { rye: 1 }, 3)]);
    expect(alone.tasters).toMatchObject([{ taster: "a", offset: 0, stretch: 1 }]);
    const pairs = ["malt", "rye", "wheat"].flatMap((id, i) =>
      [0, 1].flatMap((again) => [
        { ...note("low", { [id]: 1 }, 2 + 2 * i), again },
        { ...note("high", { [id]: 1 }, 4 + 2 * i), again },
      ]),
    );
    const { tasters } = learnLevels(
      whiskeys,
      pairs.map(({ taster, parts, says }) => ({
        taster,
        parts,
        says: Object.fromEntries(
          ["smoke.smoke", "sweet.honey", "fruit.stone", "nut.nut"].map((id) => [
            id,
            { ...says["smoke.smoke"], mean: says["smoke.smoke"]?.mean ?? 0, sd: 1 },
          ]),
        ),
      })),
    );
    const offset = (id: string): number => tasters.find(({ taster }) => taster === id)?.offset ?? Number.NaN;
    expect(offset("high") + offset("low")).toBeCloseTo(0, 9);
    expect(offset("high")).toBeGreaterThan(0.6);
    expect(offset("high")).toBeLessThan(1.05);
  });

  test("P4 nothing at all by one who says little of everything is no sure nothing", () => {
    // Both say 0 of the malt; only one of them says less than the other of the rest.
    const rest = ["rye", "wheat"].flatMap((id) =>
      [0, 1, 2].flatMap(() => [note("low", { [id]: 1 }, 2), note("high", { [id]: 1 }, 7)]),
    );
    const learned = (taster: string) =>
      level(learnLevels(whiskeys, [...rest, note(taster, { malt: 1 }, 0, 0.6)]), "malt");
    expect(learned("high").mean).toBeLessThan(learned("low").mean);
  });

  test("P5 a mix is the mean of its parts, off by how mixes stray; its parts' doubt goes together", () => {
    const learned = learnLevels(whiskeys, [note("a", { malt: 1 }, 7), note("b", { malt: 1, rye: 1 }, 5)]);
    const half = mixLevels(learned, { malt: 1, rye: 1 })["smoke.smoke"];
    expect(half?.mean).toBeCloseTo((level(learned, "malt").mean + level(learned, "rye").mean) / 2, 9);
    expect(half?.sd).toBeGreaterThanOrEqual(learned.mixing);
    expect(mixLevels(learned, { malt: 2 })["smoke.smoke"]?.sd).toBeCloseTo(level(learned, "malt").sd, 9);
  });

  test("P6 the whiskey of which nothing was said teaches most, and it is said why", () => {
    const told = [0, 1, 2, 3].flatMap(() => [note("a", { malt: 1 }, 6), note("b", { rye: 1 }, 3)]);
    const learned = learnLevels(whiskeys, told);
    const glasses = whiskeys.map(({ id }) => ({ id, parts: { [id]: 1 } }));
    const { glasses: found, before } = teachesMost(learned, glasses, ["malt", "rye", "wheat"]);
    expect(found[0]?.id).toBe("wheat");
    expect(found[0]?.after).toBeLessThan(before);
    expect(
      whyItTeaches(learned, { id: "wheat", parts: { wheat: 1 } }, found[0] as (typeof found)[number], {
        ...nothing,
        attribute: () => "smoke",
      }),
    ).toMatch(
      /^Nothing was said of it yet, only its label\. Its widest level is smoke: [\d.]+, from [\d.]+ to [\d.]+\. A note would take \d+ % off all that is not known(, \d+ % of that about others, first (malt|rye))?\.$/,
    );
  });

  test("P6 each reason says what is its own whiskey's: from what it is known, its widest attribute, the recipes on it", () => {
    const says = (levels: Record<string, number>) =>
      Object.fromEntries(Object.entries(levels).map(([id, mean]) => [id, { mean, sd: 1 }]));
    const learned = learnLevels(whiskeys, [
      ...[0, 1, 2].map(() => ({ taster: "a", parts: { malt: 1 }, says: says({ "smoke.smoke": 6 }) })),
      { taster: "a", parts: { malt: 1 }, says: says({ "sweet.honey": 3 }) },
      ...[0, 1].map(() => ({ taster: "b", parts: { rye: 1 }, says: says({ "sweet.honey": 6 }) })),
      { taster: "b", parts: { rye: 1 }, says: says({ "smoke.smoke": 4 }) },
      { taster: "b", parts: { rye: 1, malt: 1 }, says: says({ "sweet.honey": 5 }) },
    ]);
    const particular = {
      ...nothing,
      toldOf: (id: string) =>
        id === "malt"
          ? { alone: 4, inMixes: 1, written: false }
          : { alone: id === "rye" ? 3 : 0, inMixes: Number(id === "rye"), written: id === "rye" },
      recipes: (id: string) => (id === "malt" ? ["One", "Two", "Three"] : id === "rye" ? ["Two"] : []),
    };
    const why = (parts: Record<string, number>): string => {
      const glass = { id: "glass", parts };
      const [taught] = teachesMost(learned, [glass], ["malt", "rye", "wheat"]).glasses;
      return whyItTeaches(learned, glass, taught as NonNullable<typeof taught>, particular);
    };
    /** As it is learned: the wider of the two intervals of 95 of 100. */
    const widest = (parts: Record<string, number>): string => {
      const [first] = Object.entries(mixLevels(learned, parts))
        .map(([id, level]) => ({ id, ...heldLevel(level, 0.95) }))
        .toSorted((a, b) => b.high - b.low - (a.high - a.low));
      return `Its widest level is ${first?.id}: ${first?.mean.toFixed(1)}, from ${first?.low.toFixed(1)} to ${first?.high.toFixed(1)}`;
    };
    const malt = why({ malt: 1 });
    expect(malt).toContain("Known from 4 notes of it and 1 note of mixes with it.");
    expect(malt).toContain("Its widest level is sweet.honey: ");
    expect(malt).toContain(`${widest({ malt: 1 })}.`);
    expect(malt).toContain("3 recipes hang on it: One, Two and 1 more.");
    const rye = why({ rye: 1 });
    expect(rye).toContain("Known from 3 notes of it, what the shelf says and 1 note of mixes with it.");
    expect(rye).toContain("Its widest level is smoke.smoke: ");
    expect(rye).toContain(`${widest({ rye: 1 })}.`);
    expect(rye).toContain("1 recipe hangs on it: Two.");
    const mix = why({ malt: 1, wheat: 1 });
    expect(mix).toContain("It tells of 2 whiskeys at once; least is said of wheat: nothing yet.");
    expect(mix).toContain(`${widest({ malt: 1, wheat: 1 })}.`);
    expect(mix).not.toContain("on it");
  });

  test("P6 the widest is of what was spoken of; of the others it is said how many they are", () => {
    const learned = learnLevels(whiskeys, [
      { taster: "a", parts: { malt: 1 }, says: { "smoke.smoke": { mean: 6, sd: 1 } } },
      { taster: "a", parts: { rye: 1 }, says: { "sweet.honey": { mean: 6, sd: 1 } } },
    ]);
    const glass = { id: "malt", parts: { malt: 1 } };
    const [taught] = teachesMost(learned, [glass], ["malt", "rye"]).glasses;
    expect(whyItTeaches(learned, glass, taught as NonNullable<typeof taught>, nothing)).toMatch(
      /Its widest level is smoke\.smoke: [\d.]+, from [\d.]+ to [\d.]+; of 1 attribute nothing was said\./,
    );
  });

  test("P7 what is outside the domain says so", () => {
    expect(() => learnLevels(whiskeys, [note("a", { port: 1 }, 3)])).toThrow("got port");
    expect(() => learnLevels(whiskeys, [note("a", { malt: -1 }, 3)])).toThrow("amounts of 0 or more");
    expect(() => learnLevels(whiskeys, [note("a", { malt: 1 }, 3, 0)])).toThrow("spread above 0");
    expect(() => learnLevels([...whiskeys, { id: "rye", label }], [])).toThrow("got one twice");
    expect(learnLevels(whiskeys, []).attributes).toEqual([]);
    expect(learnLevels([], []).whiskeys).toEqual([]);
  });
});
