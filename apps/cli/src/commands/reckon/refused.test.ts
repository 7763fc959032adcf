import { expect, test } from "vitest";
import { issuesOf } from "../../fixtures/cli.ts";
import { runProgram } from "../../program.ts";

test.each([
  ["a strength above 100 %", ["mix", "--part", "1@101"], ["strength_out_of_range", "part", 0]],
  ["parts all zero", ["mix", "--part", "0@40", "--part", "0@60"], ["parts_all_zero", "part"]],
  [
    "too many parts",
    ["mix", ...Array.from({ length: 25 }, () => "--part=1@40")],
    ["value_too_large", "part"],
  ],
  [
    "water that would make it stronger",
    ["reduce", "--from=40", "--to=43", "--volume=1l"],
    ["target_above_start", "to"],
  ],
  ["no volume", ["reduce", "--from", "60", "--to", "43"], ["flag_missing", "volume"]],
  ["two volumes", ["reduce", "--from=60", "--to=43", "--volume=1l", "--fill=1l"], ["flags_exclude", "fill"]],
  ["nothing to convert", ["convert"], ["flag_missing"]],
  ["two things to convert", ["convert", "--abv", "40", "--proof", "80"], ["flags_exclude", "proof"]],
  [
    "a mass fraction above 1",
    ["density", "--mass-fraction=1.1", "--celsius=20"],
    ["value_too_large", "mass-fraction"],
  ],
  ["ice", ["density", "--mass-fraction=0.1", "--celsius=-20"], ["mixture_frozen", "celsius"]],
  ["nothing to reduce", ["reduce", "--to=43", "--volume=1l"], ["flag_missing", "from"]],
  ["two starts", ["reduce", "--from=60", "--part=1@50", "--to=43", "--volume=1l"], ["flags_exclude", "part"]],
  [
    "two liquids and no volume",
    ["reduce", "--from=60", "--to=50", "--with=40", "--with=0", "--fill=1l"],
    ["flag_missing", "volume"],
  ],
  [
    "a strength that neither liquid reaches",
    ["reduce", "--from=46", "--to=62", "--volume=350ml", "--with=62.4", "--with=0", "--fill=700ml"],
    ["strength_not_reachable", "to"],
  ],
  [
    "a second bottle too weak",
    ["reduce", "--from=46", "--to=58", "--volume=350ml", "--with=50"],
    ["target_not_between", "to"],
  ],
  [
    "steps of no number",
    ["reduce", "--from=60", "--to=43", "--volume=1l", "--by=volume"],
    ["flag_missing", "by"],
  ],
  ["a frozen bench", ["mix", "--part=1@0", "--celsius=-5"], ["mixture_frozen", "celsius"]],
  ["two measures", ["mix", "--part=1@40", "--cylinder=A", "--scale=fine"], ["instruments_exclude", "scale"]],
  ["a syringe too small", ["mix", "--part=1@40", "--syringe=10ml"], ["syringe_too_small", "syringe"]],
  ["no class of that name", ["mix", "--part=1@40", "--label=french"], ["unknown_word", "label"]],
  ["no reading", ["gauge", "--celsius=20"], ["flag_missing", "reading-proof"]],
  ["no temperature", ["gauge", "--reading-abv=50"], ["flag_missing", "celsius"]],
  [
    "a reading no mixture gives",
    ["gauge", "--reading-abv=0", "--celsius=30"],
    ["reading_heavier_than_any", "reading-abv"],
  ],
  ["nothing to weigh", ["weigh", "--abv=40"], ["flag_missing", "ml"]],
  ["no strength to weigh at", ["weigh", "--ml=100"], ["flag_missing", "abv"]],
  ["a weight that is none", ["weigh", "--grams=heavy", "--abv=40"], ["mass_unreadable", "grams"]],
  [
    "a sample heavier than water",
    ["sample", "--grams=120", "--ml=100"],
    ["reading_heavier_than_any", "grams"],
  ],
  [
    "more than there was",
    ["evaporated", "--before=700ml@62.4", "--after=700ml@65"],
    ["more_ethanol_than_before", "after"],
  ],
  [
    "a frozen level",
    ["evaporated", "--before=700ml@5", "--after=650ml@5", "--celsius-before=-15"],
    ["mixture_frozen", "celsius-before"],
  ],
  [
    "a level without a strength",
    ["evaporated", "--before=700ml", "--after=1@1"],
    ["level_unreadable", "before"],
  ],
  [
    "a vessel too small",
    ["fill", "--held=350ml@60", "--with=40", "--vessel=300ml"],
    ["vessel_over_capacity", "vessel"],
  ],
  ["no bottle and no room", ["lift", "--from=46", "--volume=1l", "--to=50"], ["flag_missing", "with"]],
  [
    "room too small",
    ["lift", "--from=46", "--volume=1l", "--to=60", "--room=1ml"],
    ["amount_too_small", "room"],
  ],
  [
    "a density of no temperature",
    ["temperature", "--abv=0", "--density=1001"],
    ["density_of_no_temperature", "density"],
  ],
  [
    "a scale that falls",
    ["weigh-out", "--part=1@40", "--fill=1l", "--reading=412", "--reading=400"],
    ["reading_falls", "reading", 1],
  ],
  [
    "a part that is none",
    ["weigh-out", "--part=1@40", "--fill=1l", "--poured=2=10"],
    ["unknown_part", "poured", 0],
  ],
  [
    "both scales",
    ["weigh-out", "--part=1@40", "--fill=1l", "--poured=1=10", "--reading=1"],
    ["flags_exclude", "reading"],
  ],
  [
    "more in the vessel than it holds",
    ["weigh-out", "--part=1@40", "--fill=1l", "--poured=1=500", "--vessel=100ml"],
    ["vessel_too_small", "vessel"],
  ],
  ["no total", ["weigh-out", "--part=1@40"], ["flag_missing", "volume"]],
  ["water to nothing", ["weigh-out", "--part=1@40", "--fill=1l", "--with=0"], ["flag_missing", "with"]],
] as const)("%s: exit code 2 and one issue", async (_what, args, [code, ...path]) => {
  const told = await runProgram([...args, "--json"], {});
  expect([told.code, told.stdout]).toEqual([2, ""]);
  expect(issuesOf(told)).toEqual([
    {
      code,
      path,
      limit: expect.any(String),
      received: expect.toSatisfy((received) => received !== undefined),
      message: expect.stringMatching(/ requires .+, got /),
    },
  ]);
});
