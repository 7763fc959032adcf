import { expect, test } from "vitest";
import { BadInput } from "./bad-input.ts";
import { type Flags, many, needed, one, some, yes } from "./flag.ts";
import { parseFlags } from "./parse-flags.ts";
import { readWhole } from "./read-number.ts";
import { readText, readToken } from "./read-text.ts";

const flags = {
  days: one(readWhole("days", 0, 30), "<days>", ""),
  name: needed(readText("name"), "<name>", ""),
  part: many(readWhole("part", 0, 9), "<part>", ""),
  json: yes(""),
} satisfies Flags;
const wanted = { args: ["flight"], maybe: ["more"], flags };

function codes(argv: readonly string[], of: Flags = flags): readonly string[] {
  try {
    parseFlags({ ...wanted, flags: of }, argv, {});
    return [];
  } catch (error) {
    if (!(error instanceof BadInput)) throw error;
    return error.issues.map(({ code, path }) => [code, ...path].join(" "));
  }
}

test("flags and arguments in any order, with a space or an equals sign", () => {
  const argv = ["--part", "1", "sunday", "--name=a=b", "--json", "--part=2", "other"];
  expect(parseFlags(wanted, argv, {})).toEqual({
    args: { flight: "sunday", more: "other" },
    flags: { days: undefined, name: "a=b", part: [1, 2], json: true },
  });
});

test.each([
  [["x", "--name", "a", "--nam", "b"], ["unknown_flag nam"]],
  [["x", "--name", "a", "-z"], ["unknown_flag z"]],
  [["x"], ["flag_missing name"]],
  [["--name", "a"], ["argument_missing flight"]],
  [["x", "--name"], ["flag_value_missing name"]],
  [["x", "--name", "--json"], ["flag_value_missing name"]],
  [["x", "--name", "a", "--name", "b"], ["flag_repeated name"]],
  [["x", "--name", "a", "--json=no"], ["flag_takes_nothing json"]],
  [["x", "y", "z", "--name", "a"], ["argument_not_expected"]],
  [["x", "--name", "a", "--days", "4.5"], ["not_whole days"]],
  [["x", "--name", "a", "--days", "-1"], ["value_too_small days"]],
  [["x", "--name", "a", "--days", "31"], ["value_too_large days"]],
  [["x", "--name", "a", "--part", "1", "--part", "ten"], ["number_unreadable part 1"]],
  [["x", "--name", " "], ["text_missing name"]],
])("%j gets %j", (argv, issues) => {
  expect(codes(argv)).toEqual(issues);
});

test("everything that is wrong is told together", () => {
  expect(codes(["--days", "x", "--prat=3"])).toEqual([
    "unknown_flag prat",
    "argument_missing flight",
    "number_unreadable days",
    "flag_missing name",
  ]);
});

test("a variable stands in for a flag that is not given, and is held to the same rule", () => {
  const token = { token: one(readToken, "<token>", "", "PARTSPROOF_TOKEN") };
  const bare = { args: [], maybe: [], flags: token };
  const good = "0a".repeat(32);
  const other = "1b".repeat(32);
  expect(parseFlags(bare, [], { PARTSPROOF_TOKEN: good }).flags).toEqual({ token: good });
  expect(parseFlags(bare, ["--token", other], { PARTSPROOF_TOKEN: good }).flags).toEqual({ token: other });
  expect(parseFlags(bare, [], { PARTSPROOF_TOKEN: "" }).flags).toEqual({ token: undefined });
  expect(() => parseFlags(bare, [], { PARTSPROOF_TOKEN: "secret-that-is-wrong" })).toThrow(BadInput);
});

test("a token that is wrong is not repeated back", () => {
  const read = readToken("0a".repeat(31));
  expect(read).toMatchObject({
    ok: false,
    issue: { code: "token_unreadable", received: "62 characters, not shown" },
  });
});

test("a flag that must be there at least once", () => {
  expect(codes(["x"], { glass: some(readText("glass"), "<vessel>", "") })).toEqual(["flag_missing glass"]);
});
