import { expect, test } from "vitest";
import { ENGLISH } from "./english.data.ts";
import { openReader } from "./open-reader.ts";

const plain = openReader(ENGLISH);
const taught = openReader(ENGLISH, [
  { phrase: "Attic", attribute: "wood.old" },
  { phrase: "grandad's shed", attribute: "spirit.heads" },
  { phrase: "peach", attribute: "nothing" },
  { phrase: "soft", attribute: "sweet.dairy" },
  { phrase: "plum", attribute: "fruit.berry" },
  { phrase: "plum", attribute: "fruit.dried" },
  { phrase: " ", attribute: "nut.nut" },
]);
const of = (read: typeof plain, text: string): readonly string[] =>
  read(text).observations.map(({ attribute, stance }) => `${attribute} ${stance}`);

test("N14 a taught word is what the household means by it, in the plural, denied, and with a degree", () => {
  expect(of(taught, "an attic, and no grandad’s shed")).toEqual(["wood.old present", "spirit.heads absent"]);
  expect(taught("loads of attics").observations[0]?.strength).toBeGreaterThan(6.5);
  expect(taught("a hint of atticky").observations[0]?.attribute).toBe("wood.old");
});

test("N14 a word taught to be nothing is nothing, also as an adjective; a longer phrase still is", () => {
  expect(of(taught, "peach, peachy, peaches")).toEqual([]);
  expect(of(taught, "no peach")).toEqual([]);
  expect(of(taught, "white peach")).toEqual(["fruit.stone present"]);
});

test("N14 a taught meaning takes the place of the language's own, and the last one holds", () => {
  expect(of(taught, "plum")).toEqual(["fruit.dried present"]);
  expect(of(taught, "soft toffee")).toEqual(["sweet.dairy present", "sweet.sugar present"]);
});

test("N14 another reader knows nothing of it", () => {
  expect(of(taught, "grandad's shed")).toEqual(["spirit.heads present"]);
  expect(of(plain, "grandad's shed")).toEqual([]);
  expect(of(plain, "plum and peach")).toEqual(["fruit.stone present", "fruit.stone present"]);
});
