import { expect, test } from "vitest";
import { matchPath } from "./match-path.ts";

test("named parts are read and decoded, and a trailing slash does not matter", () => {
  expect(matchPath("/h/:household/recipes/:recipe", "/h/1/recipes/a%20b/")).toEqual({
    household: "1",
    recipe: "a b",
  });
  expect(matchPath("/", "/")).toEqual({});
});

test("other words, other lengths and broken escapes do not match", () => {
  expect(matchPath("/h/:household/recipes", "/h/1/batches")).toBeNull();
  expect(matchPath("/h/:household", "/h/1/recipes")).toBeNull();
  expect(matchPath("/h/:household", "/h/%E0%A4%A")).toBeNull();
});
