import { expect, test } from "vitest";
import { ENGLISH } from "./english.data.ts";
import { saysHow } from "./says-how.ts";

test("N15 what says how, where or whether is no flavour to be taught", () => {
  for (const phrase of ["no", "Hint of", "on the nose", "more", "maybe", "and"])
    expect(saysHow(phrase, ENGLISH), phrase).toBe(true);
  for (const phrase of ["attic", "soft", "smoke", "lovely", "grandad's shed", ""])
    expect(saysHow(phrase, ENGLISH), phrase).toBe(false);
});
