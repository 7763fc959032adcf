import fc from "fast-check";
import { expect, test } from "vitest";
import { placeInJson } from "./place-in-json.ts";

const text = `{
  "items": ["a, ]", "b\\"{"],
  "rankings": [
    [["a, ]"], ["c"]]
  ]
}`;

test("a value of a file is found by its path, with its line", () => {
  const at = (...path: (string | number)[]) => {
    const { from, to, line } = placeInJson(text, path);
    return [text.slice(from, to), line];
  };
  expect(at("rankings", 0, 1, 0)).toEqual(['"c"', 4]);
  expect(at("items", 1)).toEqual(['"b\\"{"', 2]);
  expect(at("rankings", 0)).toEqual(['[["a, ]"], ["c"]]', 4]);
  // What is missing is looked for where it should be.
  expect(at("rankings", 3, 1)).toEqual([text.slice(text.indexOf("[\n"), text.indexOf("\n}")), 3]);
  expect(at("level")).toEqual([text, 1]);
  expect(at()).toEqual([text, 1]);
});

test("whatever the file, each of its values is found", () => {
  fc.assert(
    fc.property(fc.json({ maxDepth: 4 }), fc.constantFrom(0, 1, 3), (made, indent) => {
      const whole: unknown = JSON.parse(made);
      const shown = JSON.stringify(whole, null, indent);
      const look = (value: unknown, path: readonly (string | number)[]): void => {
        const { from, to } = placeInJson(shown, path);
        expect(JSON.parse(shown.slice(from, to))).toEqual(value);
        if (value !== null && typeof value === "object")
          for (const [key, inner] of Object.entries(value)) look(inner, [...path, key]);
      };
      look(whole, []);
    }),
    { numRuns: 60 },
  );
});
