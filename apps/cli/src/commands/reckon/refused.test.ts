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
