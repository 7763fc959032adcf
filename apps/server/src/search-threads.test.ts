import { setTimeout as wait } from "node:timers/promises";
import { answerHere, type Question } from "@partsproof/house/services";
import { afterAll, expect, test } from "vitest";
import { searchThreads } from "./search-threads.ts";

const threads = searchThreads();
afterAll(() => threads.close());

const shelf = (n: number, attributes: number, maxBottles: number, maxParts: number): Question<"recipes"> => ({
  kind: "recipes",
  problem: {
    whiskeys: Array.from({ length: n }, (_, at) => ({
      id: `w${at}`,
      abv: 40 + (at % 20),
      pricePerLitre: 40 + ((at * 17) % 60),
      profile: Object.fromEntries(
        Array.from({ length: attributes }, (__, a) => [
          `a${a}`,
          ((at * 37 + a * 101 + at * a * 13) % 100) / 10,
        ]),
      ),
    })),
    target: { profile: Object.fromEntries(Array.from({ length: attributes }, (_, a) => [`a${a}`, 5])) },
    rules: { maxBottles, maxParts },
  },
});
const small = shelf(20, 6, 3, 8);
const large = shelf(200, 24, 6, 30);

const timeless = <T extends { readonly elapsedMs: number }>({ elapsedMs: _, ...answer }: T) => answer;

test("SF2 a thread answers what this one does, question after question, and to several at once", async () => {
  const { problem } = small;
  const watch = { seconds: 30 };
  const questions = [
    small,
    { kind: "tradeOff", problem, of: "price" },
    { kind: "rulePrices", problem },
    { kind: "recipes", problem: { ...problem, rules: { ...problem.rules, minAgeYears: 3 } } },
  ] as const satisfies readonly Question[];
  const answers = await Promise.all(questions.map((question: Question) => threads.answer(question, watch)));
  for (const [n, question] of questions.entries())
    expect(timeless(answers[n]!)).toEqual(timeless(await answerHere<Question["kind"]>(question, watch)));
});

test("SF7 while a thread searches this one is free, and hears how far it is; time ends it", async () => {
  const heard: number[] = [];
  let beats = 0;
  const beat = setInterval(() => (beats += 1), 5);
  const answer = await threads.answer(large, { seconds: 2, onProgress: ({ gap }) => heard.push(gap) });
  clearInterval(beat);
  expect(answer.provenOptimal).toBe(false);
  expect(answer.gap).toBeGreaterThan(0);
  expect(heard.length).toBeGreaterThan(3);
  // A search in this thread that gives way to nothing would leave no beat in between.
  expect(beats).toBeGreaterThan(3);
});

// Half as long as the search would go on: one that does not end is too late.
test("SF8 aborted, a search ends at once and the next is answered", { timeout: 30_000 }, async () => {
  const leaving = new AbortController();
  const asked = threads.answer(large, { seconds: 60, signal: leaving.signal });
  await wait(300);
  leaving.abort();
  await expect(asked).rejects.toMatchObject({ name: "AbortError" });
  expect((await threads.answer(small, { seconds: 30 })).provenOptimal).toBe(true);
});

test("too many that wait are refused", async () => {
  const leaving = new AbortController();
  const all = Array.from({ length: 30 }, () =>
    threads.answer(large, { seconds: 60, signal: leaving.signal }),
  );
  const ended = Promise.allSettled(all);
  await wait(50);
  leaving.abort();
  const reasons = (await ended).map((one) =>
    one.status === "rejected" ? (one.reason as Error).name : "answered",
  );
  expect(new Set(reasons)).toEqual(new Set(["AbortError", "HouseRefusal"]));
});
