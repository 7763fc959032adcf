import { describe, expect, test } from "vitest";
import { labelLevel, learnLevels, mixLevels, teachesMost, whyItTeaches } from "./index.ts";
import type { LearnedLevels, TableNote } from "./index.ts";

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
    const called = { whiskey: (id: string) => id, attribute: () => "smoke" };
    expect(
      whyItTeaches(learned, { id: "wheat", parts: { wheat: 1 } }, found[0] as (typeof found)[number], called),
    ).toMatch(
      /^Nothing was said of it yet\. A note would take \d+ % off all that is not known, most about smoke(; \d+ % of that is about others, first (malt|rye), in a mix with it or like it by its label)?\.$/,
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
