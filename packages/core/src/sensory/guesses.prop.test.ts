import fc from "fast-check";
import { expect, test } from "vitest";
import { checkGuesses, identification, scoreGuesses } from "./index.ts";

const names = ["Lantern", "Quay", "Breakwater", "constructor", "__proto__"];
const counted = (list: readonly string[]): Record<string, number> =>
  Object.fromEntries(
    [...new Set(list)].map((name): [string, number] => [name, list.filter((x) => x === name).length]),
  );

/** A flight of up to 6 glasses, two distractors at most, and a sheet that keeps to the offer. */
const sheets = fc
  .tuple(
    fc.array(fc.constantFrom(...names), { minLength: 1, maxLength: 6 }),
    fc.subarray(names, { maxLength: 2 }),
  )
  .chain(([truth, distractors]) => {
    const slots = [...truth, ...distractors];
    return fc
      .tuple(
        fc.shuffledSubarray(slots, { minLength: slots.length }),
        fc.array(fc.boolean(), { minLength: truth.length, maxLength: truth.length }),
      )
      .map(([order, given]) => ({
        truth,
        offer: counted(slots),
        guesses: truth.map((_, i) => (given[i] ? (order[i] ?? null) : null)),
      }));
  });

test("G2 a sheet that keeps to the offer is never refused", () => {
  fc.assert(
    fc.property(sheets, ({ offer, guesses }) => {
      expect(checkGuesses({ offer, guesses })).toEqual({ ok: true });
    }),
  );
});

test("G1 one name more than the offer holds is refused, and the refusal names it", () => {
  fc.assert(
    fc.property(sheets, fc.constantFrom(...names), ({ offer, guesses }, name) => {
      const offered = Object.hasOwn(offer, name) ? (offer[name] ?? 0) : 0;
      const rest = guesses.filter((guess) => guess !== name);
      const more = [...rest, ...Array.from({ length: offered + 1 }, () => name)];
      expect(checkGuesses({ offer, guesses: more })).toEqual({
        ok: false,
        code: offered === 0 ? "name_not_offered" : "name_used_too_often",
        name,
        offered,
        used: offered + 1,
        glasses: Array.from({ length: offered + 1 }, (_, i) => rest.length + i),
      });
      expect(() => identification({ truth: more.map(() => "x"), guesses: more, offer })).toThrow(RangeError);
    }),
  );
});

test("G3 swapping two glasses of the same name changes nothing", () => {
  fc.assert(
    fc.property(sheets, fc.nat(), fc.nat(), ({ truth, guesses }, a, b) => {
      const [i, j] = [a % truth.length, b % truth.length];
      fc.pre(truth[i] === truth[j]);
      const swapped = guesses.with(i, guesses[j] ?? null).with(j, guesses[i] ?? null);
      const before = scoreGuesses({ truth, guesses });
      const after = scoreGuesses({ truth, guesses: swapped });
      expect(after.right).toBe(before.right);
      expect(new Set(after.confusions)).toEqual(new Set(before.confusions));
    }),
  );
});

test("G4, I1 right and confused add up, and the tail is the share of random sheets that do as well", () => {
  fc.assert(
    fc.property(sheets, ({ truth, guesses, offer }) => {
      const { right, guessed, confusions, law, pAtLeast } = identification({ truth, guesses, offer });
      expect(right + confusions.reduce((sum, { times }) => sum + times, 0)).toBe(guessed);
      expect(guessed).toBe(guesses.filter((guess) => guess !== null).length);
      // Every way to put offered slots on the guessed glasses, by definition.
      const slots = Object.entries(offer).flatMap(([name, times]) =>
        Array.from({ length: times }, () => name),
      );
      const wanted = truth.filter((_, i) => guesses[i] !== null);
      let [all, asGood] = [0, 0];
      const go = (glass: number, left: readonly string[], hits: number): void => {
        if (glass === wanted.length) {
          all += 1;
          if (hits >= right) asGood += 1;
          return;
        }
        left.forEach((name, i) =>
          go(glass + 1, left.toSpliced(i, 1), hits + (name === wanted[glass] ? 1 : 0)),
        );
      };
      go(0, slots, 0);
      expect(law.total).toBe(BigInt(all));
      expect(pAtLeast).toBe(asGood / all);
    }),
    { numRuns: 60 },
  );
});
