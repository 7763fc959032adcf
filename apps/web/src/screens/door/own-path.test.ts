import { expect, test } from "vitest";
import { ownPath } from "./own-path.ts";

test("after signing in one is sent to a page of this house only", () => {
  expect(ownPath("/h/x/flights?at=1")).toBe("/h/x/flights?at=1");
  for (const to of [
    null,
    "",
    "https://elsewhere.example",
    "//elsewhere.example",
    "/\\elsewhere.example",
    "javascript:alert(1)",
  ]) {
    expect(ownPath(to)).toBe("/");
  }
});
