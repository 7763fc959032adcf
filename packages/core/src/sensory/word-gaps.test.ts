import fc from "fast-check";
import { expect, test } from "vitest";
import { repeatableRng, type Rng } from "../statistics/index.ts";
import { type SaidSheet, wordGaps } from "./index.ts";

const sheet = (tasterId: string, ...glasses: readonly string[]): SaidSheet => ({
  tasterId,
  said: new Map(glasses.map((words, glass) => [glass, new Set(words === "" ? [] : words.split(" "))])),
});

test("Z1 counted and tested by hand: three flights of three tasters", () => {
  const flight = [
    sheet("tam", "salt", "salt"),
    sheet("ilka", "smoke", "smoke salt"),
    sheet("bo", "smoke", ""),
  ];
  const found = wordGaps([flight, flight, flight], "tam");
  expect(found).toMatchObject({ flights: 3, glasses: 6, otherGlasses: 12, others: 2, looked: 0 });
  const [first, second] = found?.words.toSorted((a, b) => (a.word < b.word ? -1 : 1)) ?? [];
  // Of the table's three one says salt of both glasses, one of one, one of none.
  expect(first).toMatchObject({ word: "salt", own: 6, others: 3, othersWho: 1 });
  expect(first?.p).toBeCloseTo(2 / 27, 12);
  expect(second).toMatchObject({ word: "smoke", own: 0, others: 9, othersWho: 2, pTogether: null });
  expect(second?.leastP).toBeCloseTo(2 / 27, 12);
  // A fourth evening could show it, and both are paid for.
  const more = wordGaps([flight, flight, flight, flight], "tam");
  expect(more?.looked).toBe(2);
  expect(more?.words.map(({ pTogether }) => pTogether)).toEqual(
    [4 / 81, 4 / 81].map((p) => expect.closeTo(p, 12)),
  );
  expect(more?.amount).toMatchObject({ own: 8, others: 16 });
});

test("Z2 only what both wrote of is compared, and alone there is nothing", () => {
  const own = sheet("tam", "salt", "", "smoke");
  const less: SaidSheet = { tasterId: "bo", said: new Map([[1, new Set(["wax"])]]) };
  expect(wordGaps([[own], [own]], "tam")).toBeNull();
  expect(wordGaps([[own, sheet("ilka", "salt")]], "nobody")).toBeNull();
  expect(wordGaps([[own, less]], "tam")).toMatchObject({ glasses: 1, otherGlasses: 1, others: 1 });
  // Two of three glasses with two others make more than three with one.
  const [all, two] = [sheet("ilka", "", "", ""), sheet("bo", "", "salt")];
  const three = sheet("cy", "", "salt");
  expect(wordGaps([[own, all, two, three]], "tam")).toMatchObject({ glasses: 2, otherGlasses: 6, others: 3 });
});

test("Z1 the order of flights, sheets and glasses changes nothing", () => {
  const words = fc.array(fc.constantFrom("salt", "smoke", "wax"), { maxLength: 3 });
  const flights = fc.array(
    fc.tuple(...["tam", "ilka", "bo"].map((id) => fc.tuple(words, words).map((w) => ({ id, w })))),
    { minLength: 1, maxLength: 4 },
  );
  fc.assert(
    fc.property(flights, (made) => {
      const tables = made.map((all) => all.map(({ id, w }) => sheet(id, ...w.map((one) => one.join(" ")))));
      const turned = made
        .toReversed()
        .map((all) =>
          all.toReversed().map(({ id, w }) => sheet(id, ...w.toReversed().map((one) => one.join(" ")))),
        );
      const near = (found: ReturnType<typeof wordGaps>) =>
        found?.words
          .map(({ word, own, others, p }) => [word, own, others, Math.round(p * 1e9)])
          .toSorted((a, b) => (`${a[0]}` < `${b[0]}` ? -1 : 1));
      expect(near(wordGaps(turned, "tam"))).toEqual(near(wordGaps(tables, "tam")));
    }),
  );
});

/** Tasters with habits of an evening: a word is said of every glass or of none, as often by one as by another. */
function evenings(rng: Rng, flights: number, tasters: number): SaidSheet[][] {
  const words = Array.from({ length: 12 }, (_, i) => `w${i}`);
  return Array.from({ length: flights }, () =>
    Array.from({ length: tasters }, (_, t) => {
      const habits = words.filter((_, i) => rng.below(100) < 5 + 6 * i);
      return sheet(
        t === 0 ? "tam" : `t${t}`,
        ...Array.from({ length: 5 }, () => habits.filter(() => rng.below(10) < 9).join(" ")),
      );
    }),
  );
}

test("Z1 with nothing there at most 5 in 100 households find a gap, whatever the habits", () => {
  for (const [flights, tasters] of [
    [4, 4],
    [8, 3],
    [12, 6],
  ] as const) {
    const rng = repeatableRng(flights * 100 + tasters);
    const trials = 300;
    let found = 0;
    for (let i = 0; i < trials; i += 1)
      found += Number(
        wordGaps(evenings(rng, flights, tasters), "tam")?.words.some(
          ({ pTogether }) => (pTogether ?? 1) < 0.05,
        ),
      );
    console.log(`${flights} flights of ${tasters}: a gap found by luck in ${found} of ${trials}`);
    // 5 % and two standard errors of 300 draws.
    expect(found / trials).toBeLessThan(0.05 + 2 * Math.sqrt((0.05 * 0.95) / trials));
  }
});
