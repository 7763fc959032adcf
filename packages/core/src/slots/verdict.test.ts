import { expect, test } from "vitest";
import { abv20 } from "../quantity/index.ts";
import { parseRule } from "./parse-rule.ts";
import type { RuledWhiskey } from "./ruled-whiskey.ts";
import { sameVerdict, verdictOf } from "./verdict.ts";

// Invented, as are all names here.
const sack: RuledWhiskey = {
  id: "sack",
  abv20: abv20(46),
  profile: { "fruit.stone": 3, "smoke.smoke": { value: 1, sd: 1 }, "wood.old": null },
  pricePerLitre: 68,
  ageYears: 7,
  grains: { wheat: 0.7, corn: 0.07 },
  casks: [
    { species: "American oak", held: "nothing" },
    { species: "not known", held: "port" },
  ],
  tags: ["sweet"],
  maker: "Ninepenny Mill",
  group: "Ninepenny",
  kind: "wheat",
  released: 2019,
};

test.each([
  ["46 % or stronger", "kept"],
  ["46.1 % or stronger", "broken", 46],
  ["7 years or older", "kept"],
  ["at most 60 a litre", "broken", 68],
  ["released in or before 2018", "broken", 2019],
  ["at least 5 of 10 stone fruit", "broken", 3],
  ["at most 1 of 10 smoke", "kept"],
  ["at most 5 of 10 old wood", "unknown", "profile wood.old"],
  ["at most 5 of 10 honey", "unknown", "profile sweet.honey"],
  ["at most 5 of 10 constructor", "unknown", "profile constructor"],
  ["wheat >= 70 %", "kept"],
  ["corn <= 7 %", "kept"],
  ["corn >= 7.1 %", "broken", 7],
  ["rye >= 20 %", "unknown", "grains"],
  ["rye >= 24 %", "broken", 0],
  ["rye <= 23.5 %", "kept"],
  ["only wheat or corn", "unknown", "grains"],
  ["only wheat", "broken", "corn"],
  ["no wheat", "broken", "wheat"],
  ["no rye", "unknown", "grains"],
  ["some wheat", "kept"],
  ["some rye", "unknown", "grains"],
  ["only American oak", "unknown", "casks"],
  ["no American oak", "broken", "American oak"],
  ["some European oak", "unknown", "casks"],
  ["only casks that held port", "broken", "nothing"],
  ["no casks that held rum", "kept"],
  ["kind WHEAT or rye", "kept"],
  ["not kind wheat", "broken", "wheat"],
  ["from Saltreach", "unknown", "place"],
  ["distilled at Ninepenny", "kept"],
  ["not tagged peated", "kept"],
  ["tagged peated", "broken", "sweet"],
  ["still sold", "unknown", "sold"],
] as const)("L4 %s is %s", (text, state, what?: number | string) => {
  const parsed = parseRule(text);
  const condition = parsed.ok ? parsed.rule[0] : undefined;
  if (condition === undefined || condition.about === "same") throw new Error(text);
  const verdict = verdictOf(condition, sack);
  const expected = { kept: {}, broken: { value: what }, unknown: { fact: what } }[state];
  expect(verdict).toEqual({ state, ...expected });
});

// Common practice of labels: region before country. Places are invented.
test.each([
  ["from Saltreach", "kept"],
  ['from "The North"', "kept"],
  ['from Quern or "the north"', "kept"],
  ['from "Saltreach, the north"', "kept"],
  ["from Quern", "broken", "Saltreach, the north"],
  ['from "Quern, the north"', "broken", "Saltreach, the north"],
  ["not from Saltreach", "broken", "Saltreach, the north"],
  ["not from Quern", "kept"],
  ['from ","', "broken", "Saltreach, the north"],
  // The rule is narrower than what is said of the whiskey.
  ['from "West Quay, Saltreach, the north"', "unknown", "place"],
  ['not from "West Quay, Saltreach, the north"', "unknown", "place"],
  ['from "West Quay, Saltreach, the north" or Saltreach', "kept"],
] as const)("L4 of a whiskey from Saltreach, the north: %s is %s", (text, state, what?: string) => {
  const parsed = parseRule(text);
  const condition = parsed.ok ? parsed.rule[0] : undefined;
  if (condition === undefined || condition.about === "same") throw new Error(text);
  const verdict = verdictOf(condition, { ...sack, place: "Saltreach, the north" });
  expect(verdict).toEqual({
    state,
    ...{ kept: {}, broken: { value: what }, unknown: { fact: what } }[state],
  });
  expect(verdictOf(condition, { ...sack, place: " , " })).toEqual({ state: "unknown", fact: "place" });
});

test("L4 two slots: what is not known of either keeps nothing", () => {
  const other: RuledWhiskey = { id: "o", abv20: abv20(50), profile: {}, group: "ninepenny" };
  const as = (not: boolean, what: "distillery" | "maker") => ({ about: "same" as const, what, not, slot: 2 });
  expect(sameVerdict(as(true, "distillery"), sack, other)).toEqual({ state: "broken", value: "Ninepenny" });
  expect(sameVerdict(as(false, "distillery"), sack, other)).toEqual({ state: "kept" });
  expect(sameVerdict(as(true, "maker"), sack, other)).toEqual({ state: "unknown", fact: "maker of slot 2" });
  expect(sameVerdict(as(true, "maker"), other, sack)).toEqual({ state: "unknown", fact: "maker" });
});
