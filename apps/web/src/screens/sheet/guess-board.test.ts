import { describe, expect, test } from "vitest";
import { glassesNamed, leftOf, refusal } from "./guess-board.ts";

const once = { nameId: "whiskey:a", label: "Tarn Rye", count: 1 };
const twice = { nameId: "whiskey:b", label: "Skerry", count: 2 };
const guesses = new Map([
  ["101", "whiskey:a"],
  ["202", "whiskey:b"],
  ["303", "whiskey:b"],
  ["404", null],
]);

describe("names on offer", () => {
  test("what is left follows from the guesses", () => {
    expect([leftOf(guesses, once), leftOf(guesses, twice)]).toEqual([0, 0]);
    expect(leftOf(new Map([["101", null]]), twice)).toBe(2);
    expect(glassesNamed(guesses, "whiskey:b")).toEqual(["202", "303"]);
  });

  test("a name used up is refused with the reason and where it is", () => {
    expect(refusal(guesses, "404", once)).toBe("Tarn Rye is offered once, and glass 101 has it");
    expect(refusal(guesses, "404", twice)).toBe("Skerry is offered twice, and glasses 202 and 303 have it");
  });

  test("a glass may keep the name it has", () => {
    expect(refusal(guesses, "101", once)).toBeNull();
    expect(refusal(guesses, "202", twice)).toBeNull();
  });
});
