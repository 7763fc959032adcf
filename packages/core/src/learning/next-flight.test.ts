import { describe, expect, test } from "vitest";
import type { TasteShape } from "./prior.data.ts";
import { type History, keepsRules, learnTaste, nextFlight, type TriedRanking, whatIf } from "./index.ts";

const whiskey = (id: string, smoke: number, sweet: number, sd = 0) => ({
  id,
  profile: { smoke: { value: smoke, sd }, sweet: { value: sweet, sd } },
});
const malt = whiskey("malt", 8, 1);
const islander = whiskey("islander", 7.5, 1.5);
const wheat = whiskey("wheat", 0, 8);
const alone = (id: string) => ({ id, parts: { [id]: 1 } });
const WANTED = { glasses: 4, maxParts: 6, start: 1 };
const five: TriedRanking[] = Array.from({ length: 5 }, () => [["malt"], ["wheat"]]);

const meanOf = (history: History, id: string, shape?: TasteShape): number => {
  const { posterior } = nextFlight(history, shape === undefined ? WANTED : { ...WANTED, shape });
  return posterior.find((one) => one.id === id)?.mean ?? Number.NaN;
};

describe("what carries from one whiskey to another", () => {
  const history = {
    whiskeys: [malt, islander, wheat],
    tried: ["malt", "islander", "wheat"].map(alone),
    rankings: five,
  };
  const shape = { scale: 2, length: 0.8, curve: 0 };

  test("L1 a whiskey never ranked is believed liked as its like is", () => {
    expect(meanOf(history, "islander", shape)).toBeGreaterThan(meanOf(history, "wheat", shape) + 1);
    expect(meanOf(history, "islander", shape)).toBeLessThan(meanOf(history, "malt", shape));
  });

  test("L1 one whose levels are not known is believed less like it", () => {
    const unknown = { ...history, whiskeys: [malt, whiskey("islander", 7.5, 1.5, 2.9), wheat] };
    const gap = (of: History): number => meanOf(of, "malt", shape) - meanOf(of, "islander", shape);
    expect(gap(unknown)).toBeGreaterThan(gap(history));
  });

  test("L1 the unit of the levels does not matter", () => {
    const tenfold = {
      ...history,
      whiskeys: history.whiskeys.map(({ id, profile }) =>
        whiskey(id, 10 * profile.smoke.value, 10 * profile.sweet.value),
      ),
    };
    for (const id of ["malt", "islander", "wheat"])
      expect(meanOf(tenfold, id)).toBeCloseTo(meanOf(history, id), 9);
  });
});

describe("L3 what hardly says anything", () => {
  test.each([
    ["one recipe", { tried: [alone("malt")], rankings: [] }],
    ["one ranking", { tried: [alone("malt"), alone("wheat")], rankings: [[["malt"], ["wheat"]]] }],
    [
      "ties only",
      {
        tried: [alone("malt"), alone("wheat"), alone("islander")],
        rankings: [[["malt", "wheat", "islander"]]],
      },
    ],
    [
      "a recipe under two ids, ranked against itself",
      {
        tried: [alone("malt"), { id: "again", parts: { malt: 3 } }],
        rankings: [[["malt"], ["again"]], [["malt", "again"]]],
      },
    ],
    ["a ranking of one", { tried: [alone("malt")], rankings: [[["malt"]]] }],
    [
      "the same ranking 200 times",
      { tried: [alone("malt"), alone("wheat")], rankings: Array.from({ length: 40 }, () => five).flat() },
    ],
  ] as const)("%s", (_, { tried, rankings }) => {
    const { posterior, glasses } = nextFlight({ whiskeys: [malt, wheat, islander], tried, rankings }, WANTED);
    for (const { mean, sd, pBest } of posterior) expect([mean, sd, pBest].every(Number.isFinite)).toBe(true);
    expect(glasses).toHaveLength(4);
    const chances = new Map(
      tried.map(({ parts }, i) => [Object.keys(parts).join(), posterior[i]?.pBest ?? 0]),
    );
    expect([...chances.values()].reduce((a, b) => a + b, 0)).toBeCloseTo(1, 9);
  });

  test("one whiskey: its one recipe, and stopping advised", () => {
    const { glasses, stop } = nextFlight({ whiskeys: [malt], tried: [alone("malt")], rankings: [] }, WANTED);
    expect(glasses.map(({ parts }) => parts)).toEqual([{ malt: 1 }]);
    expect(stop.advised).toBe(true);
  });

  test("nothing tried: no anchor, recipes that differ, no posterior", () => {
    const { glasses, posterior } = nextFlight({ whiskeys: [malt, wheat], tried: [], rankings: [] }, WANTED);
    expect(glasses).toHaveLength(4);
    expect(posterior).toEqual([]);
  });

  test("whiskeys of one profile are still told apart", () => {
    const twins = { whiskeys: [malt, { ...malt, id: "twin" }], tried: [alone("malt"), alone("twin")] };
    const rankings: TriedRanking[] = Array.from({ length: 8 }, () => [["twin"], ["malt"]]);
    expect(meanOf({ ...twins, rankings }, "twin")).toBeGreaterThan(0.5);
  });
});

test("L6 stopping: not after one ranking; after many ties of all there is", () => {
  const history = {
    whiskeys: [malt, wheat],
    tried: [alone("malt"), alone("wheat"), { id: "even", parts: { malt: 1, wheat: 1 } }],
  };
  const wanted = { glasses: 3, maxParts: 2, start: 1 };
  const once = nextFlight({ ...history, rankings: [[["malt"], ["wheat"], ["even"]]] }, wanted);
  expect(once.stop.advised).toBe(false);
  const clear: TriedRanking[] = Array.from({ length: 20 }, () => [["malt"], ["even"], ["wheat"]]);
  expect(nextFlight({ ...history, rankings: clear }, wanted).stop.advised).toBe(true);
});

test("L8 what is outside the domain throws", () => {
  const history = { whiskeys: [malt], tried: [alone("malt")], rankings: [] };
  expect(() => nextFlight(history, { ...WANTED, glasses: 1 })).toThrow("requires 2 glasses or more, got 1");
  expect(() => nextFlight({ ...history, rankings: [[["malt"], ["rye"]]] }, WANTED)).toThrow("got rye");
  expect(() => nextFlight({ ...history, tried: [{ id: "x", parts: { malt: 0.5 } }] }, WANTED)).toThrow(
    "got 0.5",
  );
  expect(() => nextFlight({ ...history, tried: [{ id: "x", parts: {} }] }, WANTED)).toThrow("got none");
});

describe("L11 what can be poured", () => {
  const history: History = {
    whiskeys: [malt, islander, wheat],
    tried: [alone("malt"), alone("wheat"), { id: "mix", parts: { malt: 1, wheat: 1 } }],
    rankings: [
      [["malt"], ["mix"], ["wheat"]],
      [["malt"], ["mix"], ["wheat"]],
    ],
  };

  test("the target stands in the flight and is no anchor", () => {
    const { glasses } = nextFlight(history, { ...WANTED, target: "malt" });
    expect(glasses.map(({ kind }) => kind)).toEqual(["anchor", "target", "new", "new"]);
    expect(glasses.slice(0, 2).map(({ parts }) => parts)).toEqual([{ malt: 1, wheat: 1 }, { malt: 1 }]);
  });

  test("what may not be mixed stands in no new glass, and anchors only where it stands ready", () => {
    const mixes = new Set(["islander", "wheat"]);
    const gone = nextFlight(history, { ...WANTED, mixes });
    expect(gone.glasses[0]).toMatchObject({ kind: "anchor", parts: { wheat: 1 } });
    const ready = nextFlight(history, { ...WANTED, mixes, ready: new Set(["malt"]) });
    expect(ready.glasses[0]).toMatchObject({ kind: "anchor", parts: { malt: 1 } });
    for (const { parts } of [...gone.glasses, ...ready.glasses.slice(1)])
      expect(parts).not.toHaveProperty("malt");
  });

  test("rules are kept by every new glass and by the favourite", () => {
    const keeps = keepsRules({
      least: { wheat: 0.25 },
      most: { malt: 0.5 },
      fewestWhiskeys: 2,
      mostWhiskeys: 2,
    });
    const { glasses, favourite } = nextFlight(history, { ...WANTED, keeps });
    const fresh = glasses.filter(({ kind }) => kind === "new");
    expect(fresh.length).toBeGreaterThan(0);
    for (const { parts } of [...fresh, { parts: favourite?.parts ?? {} }]) expect(keeps(parts)).toBe(true);
  });
});

test("what if: a mix against itself is even; what won is believed better than what lost", () => {
  const [same, won] = whatIf(
    learnTaste({ whiskeys: [malt, wheat], tried: [alone("malt"), alone("wheat")], rankings: five }),
    [{ wheat: 2 }, { malt: 1 }],
    { wheat: 1 },
  );
  expect(same).toEqual({ mean: 0, sd: 0, better: 0.5, first: 0.5 });
  expect(won?.better).toBeGreaterThan(0.8);
  expect(won?.first).toBeLessThan(won?.better ?? 0);
});

describe("L12 tasters who differ", () => {
  const tried = ["malt", "wheat"].map(alone);
  const history = (tasters: readonly (string | null)[] | null, likes: (i: number) => boolean): History => ({
    whiskeys: [malt, wheat],
    tried,
    rankings: Array.from(
      { length: 12 },
      (_, i): TriedRanking => (likes(i) ? [["malt"], ["wheat"]] : [["wheat"], ["malt"]]),
    ),
    ...(tasters === null ? {} : { tasters }),
  });
  const two = Array.from({ length: 12 }, (_, i) => (i % 3 === 0 ? "Ilka" : "Jorren"));

  test("one who ranked often does not outvote one who likes the opposite; who agree are one palate", () => {
    const apart = history(two, (i) => i % 3 === 0);
    const told = nextFlight(apart, WANTED);
    expect(told.ownShare).toBeGreaterThan(0);
    const alike = history(null, (i) => i % 3 === 0);
    expect(nextFlight(alike, WANTED).ownShare).toBe(0);
    // Eight to four by one palate; one to one of tasters.
    const wheatBetter = (of: History): number =>
      whatIf(learnTaste(of), [{ wheat: 1 }], { malt: 1 })[0]?.better ?? 0;
    expect(wheatBetter(alike)).toBeGreaterThan(0.8);
    expect(wheatBetter(apart)).toBeGreaterThan(0.4);
    expect(wheatBetter(apart)).toBeLessThan(0.7);
    expect(
      nextFlight(
        history(two, () => true),
        WANTED,
      ).ownShare,
    ).toBe(0);
  });

  test("of one taster, and of nobody named, all is as of one palate", () => {
    const plain = nextFlight(
      history(null, (i) => i > 3),
      WANTED,
    );
    expect(
      nextFlight(
        history(
          two.map(() => "Ilka"),
          (i) => i > 3,
        ),
        WANTED,
      ),
    ).toEqual(plain);
    expect(
      nextFlight(
        history(
          two.map(() => null),
          (i) => i > 3,
        ),
        WANTED,
      ),
    ).toEqual(plain);
  });
});
