import { expect, test } from "vitest";
import { groupsOf, withPick } from "./two-and-two.ts";

const codes = ["731", "204", "558", "919"];

test("two taps make two groups of two; a third lets the older go", () => {
  const two = withPick(withPick([], "558"), "731");
  expect(groupsOf(codes, two)).toEqual([
    ["731", "558"],
    ["204", "919"],
  ]);
  expect(withPick(two, "204")).toEqual(["731", "204"]);
  expect(withPick(two, "558")).toEqual(["731"]);
  expect(groupsOf(codes, ["731"])).toEqual([["731"], []]);
});
