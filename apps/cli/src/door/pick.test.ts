import { expect, test } from "vitest";
import { BadInput } from "../flags/index.ts";
import { type Named, pick } from "./pick.ts";

const things: readonly Named[] = [
  { id: "01aaaaa1", names: ["Dune Wheat", "Wheat"] },
  { id: "01aaaab2", names: ["Kilnmoor Rye", "Rye"] },
  { id: "01bbbbb3", names: ["Kilnmoor Rye old", "Rye"] },
  { id: "rye", names: ["An id that is a name"] },
];

test.each([
  ["01aaaaa1", "01aaaaa1"],
  ["01aaaab", "01aaaab2"],
  ["01B", "01bbbbb3"],
  ["dune  WHEAT ", "01aaaaa1"],
  ["wheat", "01aaaaa1"],
  ["kilnmoor rye", "01aaaab2"],
  // A whole id is meant before a name.
  ["rye", "rye"],
])("%j is %s", (text, id) => {
  expect(pick("whiskey", text, things, ["whiskey"]).id).toBe(id);
});

function issue(text: string, of: readonly Named[] = things): unknown {
  try {
    return pick("whiskey", text, of, ["slot", 1]).id;
  } catch (error) {
    if (!(error instanceof BadInput)) throw error;
    return error.issues[0];
  }
}

test("what two things can be called is refused, and both are listed", () => {
  expect(issue("Rye", things.slice(0, 3))).toMatchObject({
    code: "ambiguous_whiskey",
    path: ["slot", 1],
    received: "Rye",
    limit: expect.stringMatching(/Kilnmoor Rye \(01aaaab2\), Kilnmoor Rye old \(01bbbbb3\)$/),
  });
  expect(issue("01aaaa")).toMatchObject({ code: "ambiguous_whiskey" });
});

test("what nothing is called is refused, with what there is and what is nearest", () => {
  expect(issue("kiln")).toMatchObject({
    code: "unknown_whiskey",
    limit: expect.stringContaining("Dune Wheat (01aaaaa1)"),
    message: expect.stringContaining('nearest: "Kilnmoor Rye"'),
  });
  expect(issue("Wheet")).toMatchObject({ message: expect.stringContaining('nearest: "Wheat"') });
  expect(issue("x", [])).toMatchObject({
    code: "unknown_whiskey",
    limit: expect.stringContaining("none yet"),
  });
  // An empty text begins every id and means none of them.
  expect(issue(" ")).toMatchObject({ code: "unknown_whiskey" });
});
