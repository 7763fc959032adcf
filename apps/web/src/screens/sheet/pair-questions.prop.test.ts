import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { mostPairQuestions, type PairAnswer, pairState } from "./pair-questions.ts";

const CODES = ["731", "204", "558", "919", "362", "147", "880", "415", "626", "293"];

/** Asks a taster who holds these places (1 is best) until the ranking stands. */
function askAll(codes: readonly string[], placeOf: (code: string) => number) {
  const answers: PairAnswer[] = [];
  for (;;) {
    const now = pairState(codes, answers);
    if (now.state === "done") return { tiers: now.tiers, asked: answers.length };
    const [a, b] = now.pair;
    const [pa, pb] = [placeOf(a), placeOf(b)];
    answers.push({ pair: now.pair, ahead: pa === pb ? "level" : pa < pb ? a : b });
  }
}

const held = (codes: readonly string[], placeOf: (code: string) => number) =>
  [...new Set(codes.map(placeOf))]
    .toSorted((a, b) => a - b)
    .map((place) => codes.filter((code) => placeOf(code) === place).toSorted());

function* orders(n: number, levels: number): Generator<readonly number[]> {
  if (n === 0) yield [];
  else
    for (const rest of orders(n - 1, levels))
      for (let place = 0; place < levels; place += 1) yield [...rest, place];
}

test("most questions: the worst case of merge insertion as published", () => {
  // OEIS A001768, from memory; Knuth, The Art of Computer Programming 3, 2nd ed., 5.3.1, prints the same for n = 1 … 12.
  const published = [0, 1, 3, 5, 7, 10, 13, 16, 19, 22, 26, 30];
  expect(published.map((_, i) => mostPairQuestions(i + 1))).toEqual(published);
});

describe("a taster who does not contradict themselves", () => {
  test.each([2, 3, 4, 5])(
    "%i glasses, every order with and without level ones: found, in no more questions than the most",
    (n) => {
      const codes = CODES.slice(0, n);
      let worst = 0;
      for (const places of orders(n, n)) {
        const placeOf = (code: string): number => places[codes.indexOf(code)] ?? 0;
        const { tiers, asked } = askAll(codes, placeOf);
        expect(tiers.map((tier) => tier.toSorted())).toEqual(held(codes, placeOf));
        worst = Math.max(worst, asked);
      }
      expect(worst).toBe(mostPairQuestions(n));
    },
  );

  test("up to 10 glasses drawn at random", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 6 }), { minLength: 2, maxLength: 10 }), (places) => {
        const codes = CODES.slice(0, places.length);
        const placeOf = (code: string): number => places[codes.indexOf(code)] ?? 0;
        const { tiers, asked } = askAll(codes, placeOf);
        expect(tiers.map((tier) => tier.toSorted())).toEqual(held(codes, placeOf));
        expect(asked).toBeLessThanOrEqual(mostPairQuestions(codes.length));
      }),
    );
  });
});

test("law: whatever is said, every glass is ranked once, no pair is asked twice, and none said to be ahead is level", () => {
  fc.assert(
    fc.property(fc.integer({ min: 2, max: 10 }), fc.infiniteStream(fc.nat(2)), (n, choices) => {
      const codes = CODES.slice(0, n);
      const answers: PairAnswer[] = [];
      const asked = new Set<string>();
      for (const choice of choices) {
        const now = pairState(codes, answers);
        if (now.state === "done") {
          expect(now.tiers.flat().toSorted()).toEqual(codes.toSorted());
          for (const { pair, ahead } of answers)
            if (ahead !== "level")
              expect(now.tiers.some((tier) => pair.every((code) => tier.includes(code)))).toBe(false);
          return;
        }
        const key = [...now.pair].toSorted().join(" ");
        expect(asked.has(key)).toBe(false);
        asked.add(key);
        answers.push({ pair: now.pair, ahead: [...now.pair, "level"][choice] ?? "level" });
      }
    }),
  );
});
