import { readFileSync } from "node:fs";
import { gzipSync } from "node:zlib";
import { expect, test } from "vitest";
import { NOTED } from "./attributes.data.ts";
import { ENGLISH } from "./english.data.ts";
import { listed } from "./listed.ts";
import { openReader } from "./open-reader.ts";

const read = openReader(ENGLISH);
/** Of the project's list of tasting words: word, family, group. */
const words = readFileSync(new URL("fixtures/vocabulary.csv", import.meta.url), "utf8")
  .split("\n")
  .filter((line) => line !== "" && !line.startsWith("#"))
  .slice(1)
  .map((line) => line.split(","));

test("every attribute has words, every word an attribute, and there are at least 900 forms", () => {
  const forms = Object.entries(ENGLISH.flavours).flatMap(([key, text]) =>
    listed(text).map((word) => [key, word] as const),
  );
  expect(forms.length).toBeGreaterThanOrEqual(900);
  const used = new Set(Object.keys(ENGLISH.flavours).flatMap((key) => key.split("+")));
  expect([...used].toSorted()).toEqual([...NOTED].toSorted());
  const once = new Set(forms.map(([, word]) => word.split("=")[0]));
  expect(once.size).toBe(forms.length);
  console.log(
    `vocabulary: ${forms.length} forms of flavours, ${ENGLISH.phrases.reduce((n, one) => n + listed(one.words).length, 0)} other phrases`,
  );
});

test.each(words)("%s is %s.%s", (word, family, group) => {
  const found = read(`a hint of ${word}`).observations.map(({ attribute }) => attribute);
  expect(found).toContain(`${family}.${group?.replaceAll(" ", "-")}`);
});

test("vocabulary and grammar are at most 60 KB compressed", () => {
  const bytes = gzipSync(JSON.stringify(ENGLISH), { level: 9 }).length;
  console.log(`vocabulary and grammar: ${JSON.stringify(ENGLISH).length} B, ${bytes} B compressed`);
  expect(bytes).toBeLessThanOrEqual(60_000);
});

test("a list is written as lists are: _ stands only where there is a choice", () => {
  const wrong: string[] = [];
  const look = (part: unknown): void => {
    if (typeof part === "string")
      wrong.push(...part.split("|").filter((entry) => entry.includes("_") && !entry.includes("/")));
    else if (typeof part === "object" && part !== null) for (const own of Object.values(part)) look(own);
  };
  look(ENGLISH);
  expect(wrong).toEqual([]);
});
