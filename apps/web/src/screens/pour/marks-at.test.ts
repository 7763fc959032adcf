import { expect, test } from "vitest";
import { placeWith, withMark } from "./marks-at.ts";

test("a mark stands once: entered elsewhere it leaves where it stood", () => {
  const found = withMark(withMark([null, null, null], 0, "B"), 2, "A");
  expect(found).toEqual(["B", null, "A"]);
  expect(withMark(found, 1, "B")).toEqual([null, "B", "A"]);
  expect(withMark(found, 2, "A")).toEqual(found);
  expect([placeWith(found, "A"), placeWith(found, "C")]).toEqual([2, null]);
});
