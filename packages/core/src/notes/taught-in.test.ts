import { expect, test } from "vitest";
import { ENGLISH } from "./english.data.ts";
import { taughtIn } from "./taught-in.ts";

test.each([
  ["By “attic” I mean musty. There's attic.", [["attic", "savoury.stale"]]],
  ["honey. by grandad's shed i always mean creosote and paint", [["grandad's shed", "smoke.smoke"]]],
  [
    "When I say the jetty I mean seaweed, and by Monday I mean nothing.",
    [
      ["the jetty", "smoke.medicinal"],
      ["monday", "nothing"],
    ],
  ],
])("N16 what a note says that a phrase means is offered: %s", (text, offers) => {
  expect(taughtIn(text, ENGLISH)).toEqual(offers.map(([phrase, attribute]) => ({ phrase, attribute })));
});

test.each([
  "plum, I mean cherry",
  "by the way I mean it",
  "by hint of I mean oak",
  "by attic I mean, well, what do I mean",
  "by the sea. I mean salt",
  "by one two three four five six seven eight nine ten I mean oak",
])("N16 nothing is offered: %s", (text) => {
  expect(taughtIn(text, ENGLISH)).toEqual([]);
});

test("N16 what was learned already is not offered again; another meaning is", () => {
  const known = [{ phrase: "Attic", attribute: "savoury.stale" }] as const;
  expect(taughtIn("by attic I mean musty", ENGLISH, known)).toEqual([]);
  expect(taughtIn("by attic I mean old furniture", ENGLISH, known)).toEqual([
    { phrase: "attic", attribute: "wood.old" },
  ]);
});
