import fc from "fast-check";
import { expect, test } from "vitest";
import { joinHeard } from "./join-heard.ts";

test("what was heard comes after what was typed, a space between", () => {
  expect(joinHeard("Orange peel,", " wax and  honey ")).toBe("Orange peel, wax and honey");
  expect(joinHeard("Orange peel\n", "wax")).toBe("Orange peel\nwax");
  expect(joinHeard("", " smoke ")).toBe("smoke");
  expect(joinHeard("Orange", "  ")).toBe("Orange");
});

test("law: nothing typed is lost, nothing heard is lost", () => {
  fc.assert(
    fc.property(fc.string(), fc.string(), (note, heard) => {
      const joined = joinHeard(note, heard);
      const words = heard.trim().split(/\s+/).join(" ");
      expect(note.trim() === "" || joined.startsWith(note)).toBe(true);
      expect(joined.endsWith(words)).toBe(true);
    }),
  );
});
