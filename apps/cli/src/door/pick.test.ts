import { expect, test } from "vitest";
import { BadInput } from "../flags/index.ts";
import { type Named, pick } from "./pick.ts";

const things: readonly Named[] = [
  { id: "01aaaaa1", names: ["Ninepenny Mill Sweet Sack", "Sweet Sack"] },
  { id: "01aaaab2", names: ["Dunnage Row Barn Door", "Barn Door"] },
  { id: "01bbbbb3", names: ["Dunnage Row Barn Door old", "Barn Door"] },
  { id: "01ccccc4", names: ["Tollcorn"] },
  { id: "tollcorn", names: ["An id that is a name"] },
];

test.each([
  ["01aaaaa1", "01aaaaa1"],
  ["01aaaab", "01aaaab2"],
  ["01B", "01bbbbb3"],
  ["ninepenny  mill SWEET sack ", "01aaaaa1"],
  ["sweet sack", "01aaaaa1"],
  ["dunnage row barn door", "01aaaab2"],
  // A whole id is meant before a name.
  ["tollcorn", "tollcorn"],
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
  expect(issue("Barn Door", things.slice(0, 3))).toMatchObject({
    code: "ambiguous_whiskey",
    path: ["slot", 1],
    received: "Barn Door",
    limit: expect.stringMatching(
      /Dunnage Row Barn Door \(01aaaab2\), Dunnage Row Barn Door old \(01bbbbb3\)$/,
    ),
  });
  expect(issue("01aaaa")).toMatchObject({ code: "ambiguous_whiskey" });
});

test("what nothing is called is refused, with what there is and what is nearest", () => {
  expect(issue("barn")).toMatchObject({
    code: "unknown_whiskey",
    limit: expect.stringContaining("Ninepenny Mill Sweet Sack (01aaaaa1)"),
    message: expect.stringContaining('nearest: "Dunnage Row Barn Door"'),
  });
  expect(issue("Sweat Sack")).toMatchObject({ message: expect.stringContaining('nearest: "Sweet Sack"') });
  expect(issue("x", [])).toMatchObject({
    code: "unknown_whiskey",
    limit: expect.stringContaining("none yet"),
  });
  // An empty text begins every id and means none of them.
  expect(issue(" ")).toMatchObject({ code: "unknown_whiskey" });
});
