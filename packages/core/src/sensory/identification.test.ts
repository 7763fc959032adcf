import { expect, test } from "vitest";
import { checkGuesses, identification, scoreGuesses } from "./index.ts";

test("G1 the first refusal in glass order is given", () => {
  const offer = { "Lamplighter's Rest": 1, "Blend A": 2 };
  expect(checkGuesses({ offer, guesses: ["Blend A", "Blend A", null, "Blend A", "Nobody"] })).toEqual({
    ok: false,
    code: "name_used_too_often",
    name: "Blend A",
    offered: 2,
    used: 3,
    glasses: [0, 1, 3],
  });
  expect(checkGuesses({ offer, guesses: [null, "toString"] })).toMatchObject({
    code: "name_not_offered",
    name: "toString",
    offered: 0,
  });
});

test("G4 confusions are counted one an ordered pair", () => {
  expect(scoreGuesses({ truth: ["A", "A", "B", "C"], guesses: ["B", "B", "A", null] })).toEqual({
    right: 0,
    guessed: 3,
    confusions: [
      { truth: "A", guess: "B", times: 2 },
      { truth: "B", guess: "A", times: 1 },
    ],
  });
  expect(() => scoreGuesses({ truth: ["A"], guesses: [] })).toThrow(
    "scoreGuesses requires 1 guesses, got 0 guesses",
  );
});

test("I1 five glasses, one poured twice: all right has 2 of 120 by luck, not 1", () => {
  const truth = ["A", "A", "B", "C", "D"];
  const offer = { A: 2, B: 1, C: 1, D: 1 };
  const sheet = identification({ truth, guesses: truth, offer });
  expect(sheet.right).toBe(5);
  expect(sheet.law.fractionAtLeast(5)).toEqual({ numerator: 1n, denominator: 60n });
  // A distractor makes it harder: 6·5·4·3·2 = 720 ways.
  const harder = identification({ truth, guesses: truth, offer: { ...offer, E: 1 } });
  expect(harder.law.fractionAtLeast(5)).toEqual({ numerator: 1n, denominator: 360n });
});

test("I1 a name that is in a glass but not on offer can't be guessed right", () => {
  const sheet = identification({ truth: ["A", "Z"], guesses: ["A", "B"], offer: { A: 1, B: 1 } });
  expect(sheet.law.exactly).toEqual([1n, 1n, 0n]);
});

test("I2 no guess at all: 0 of 0, tail 1; guesses that break the offer throw", () => {
  const none = identification({ truth: ["A", "B"], guesses: [null, null], offer: { A: 1, B: 1 } });
  expect(none).toMatchObject({ right: 0, guessed: 0, pAtLeast: 1 });
  expect(() => identification({ truth: ["A", "B"], guesses: ["A", "A"], offer: { A: 1, B: 1 } })).toThrow(
    'identification requires "A" at most 1 times, got 2 times',
  );
});
