import { readFileSync } from "node:fs";
import fc from "fast-check";
import { expect, test } from "vitest";
import { ENGLISH } from "./english.data.ts";
import { hostile } from "./fixtures/note-texts.ts";
import { openReader } from "./open-reader.ts";

const read = openReader(ENGLISH);
const long =
  (globalThis as { process?: { env?: Record<string, string> } }).process?.env?.["PARTSPROOF_LONG"] === "1";
const CASES = long ? 1_000_000 : 20_000;
/** As text: not every bundler takes half a surrogate in JSON. */
const hard = JSON.parse(
  readFileSync(new URL("fixtures/notes/hard.json", import.meta.url), "utf8"),
) as readonly string[];

test(`N1 ${CASES} random and hostile strings: nothing throws, quotes lie within the text`, {
  timeout: 3_600_000,
}, () => {
  let wrong = 0;
  fc.assert(
    fc.property(hostile, (text) => {
      for (const { quote } of read(text).observations)
        if (quote[0] < 0 || quote[1] > text.length || quote[0] >= quote[1]) wrong++;
      return wrong === 0;
    }),
    { numRuns: CASES },
  );
  expect(wrong).toBe(0);
  if (long) console.log(`LONG notes | ${CASES} strings | nothing thrown, all quotes within the text`);
});

// How fast it is stands in the benchmarks: 50 ms.
test("N1 10 000 units of what is hard to read: nothing throws, quotes lie within the text", {
  timeout: 60_000,
}, () => {
  for (const piece of hard) {
    const text = piece.repeat(Math.ceil(10_000 / piece.length)).slice(0, 10_000);
    const outside = read(text).observations.filter(
      ({ quote }) => quote[0] < 0 || quote[1] > text.length || quote[0] >= quote[1],
    );
    expect({ piece, outside }).toEqual({ piece, outside: [] });
  }
});
