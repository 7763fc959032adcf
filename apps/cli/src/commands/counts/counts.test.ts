import { writeFile } from "node:fs/promises";
import { join } from "node:path";
import { createClient, type PairsAnswer, type RankAnswer } from "@partsproof/house/protocol";
import { openReckoner } from "@partsproof/house/reckoner";
import { expect, test } from "vitest";
import { cliAt, issuesOf, root } from "../../fixtures/cli.ts";
import { runProgram } from "../../program.ts";
import { readResults, readTest } from "./counts-flags.ts";

const client = createClient(openReckoner(), "http://reckoner.test");
const example = (name: string): string => join(root, "examples", `saltreach-${name}.json`);

async function json(...argv: readonly string[]): Promise<unknown> {
  const { code, stdout, stderr } = await runProgram([...argv, "--json"], {});
  if (code !== 0) throw new Error(stderr);
  return JSON.parse(stdout);
}

test("N1 differ and match give to the last digit what the API gives", async () => {
  for (const right of [0, 5, 10, 15])
    expect(await json("differ", "--test", "2-AFC", `--right=${right}`, "--of=15", "--sides=2")).toEqual(
      await client("countsDiffer", { body: { test: "two_afc", right, of: 15, sides: 2 } }),
    );
  expect(
    await json("differ", "--test=tetrad", "--right=9", "--of=24", "--matters-d-prime=1", "--level=0.9"),
  ).toEqual(
    await client("countsDiffer", {
      body: { test: "tetrad", right: 9, of: 24, matters: { dPrime: 1 }, level: 0.9 },
    }),
  );
  expect(
    await json("match", "--glasses=5", "--right=6", "--sheets=4", "--pours=2,1,1,1", "--distractors=2"),
  ).toEqual(
    await client("countsMatch", {
      body: { glasses: 5, right: 6, sheets: 4, pours: [2, 1, 1, 1], distractors: 2 },
    }),
  );
  expect(await json("differ", "in-turn", "--test=triangle", "--results", "R W,rr", "--share=0.3")).toEqual(
    await client("countsInTurn", {
      body: { test: "triangle", results: [true, false, true, true], effect: { share: 0.3 } },
    }),
  );
});

test("N1 files are read as they are, in a process of its own too", async () => {
  await using here = await cliAt();
  const ranked: RankAnswer = await here.json("rank", "--file", example("rankings"));
  expect(ranked).toEqual(await json("rank", "--file", example("rankings")));
  expect(ranked.plackettLuce.logWorth?.[0]).toBe(0);
  const pairs = (await json("pairs", "--file", example("wins"))) as PairsAnswer;
  expect(pairs.tieParameter).toBeGreaterThan(0);
  expect(await json("mixture", "--file", example("runs"), "--model", "special-cubic")).toMatchObject({
    model: "special-cubic",
    terms: 7,
    // No run has all three of them.
    reason: { code: "terms_not_separable" },
  });
  expect(await json("could-show", "rank", "--worths=1,0,0", "--sheets=5", "--flights=100")).toMatchObject({
    of: "rank",
  });
});

test("N3 what is wrong is told at its flag or its place in the file", async () => {
  await using here = await cliAt();
  const file = join(here.data, "wrong.json");
  const wrong = async (content: string, command: string) => {
    await writeFile(file, content);
    const told = await here.run([command, "--file", file, "--json"]);
    expect([told.code, told.stdout]).toEqual([2, ""]);
    const [issue] = issuesOf(told);
    return [issue?.code, ...(issue?.path ?? [])];
  };
  expect(await wrong('{"items":["a","b"],"rankings":[[["a"],["c"]]]}', "rank")).toEqual([
    "name_unknown",
    "rankings",
    0,
    1,
    0,
  ]);
  expect(await wrong('{"items":["a","b"],"wins":[[0,NaN],[1,0]]}', "pairs")).toEqual([
    "json_unreadable",
    "file",
  ]);
  expect(await wrong('{"items":["a","b"],"wins":[[0,1e999],[1,0]]}', "pairs")).toEqual([
    "wrong_type",
    "wins",
    0,
    1,
  ]);
  expect(await wrong("[]", "mixture")).toEqual(["wrong_type"]);
  expect(await wrong("", "rank")).toEqual(["json_unreadable", "file"]);
  for (const [argv, code, flag] of [
    [["differ", "--test=triangle", "--right=4", "--of=3"], "right_above_of", "right"],
    [["differ", "--test=square", "--right=1", "--of=3"], "unknown_word", "test"],
    [["differ", "--test=triangle", "--right=1.5", "--of=3"], "not_whole", "right"],
    [
      ["differ", "--test=triangle", "--right=1", "--of=3", "--matters=0.3", "--matters-d-prime=1"],
      "flags_exclude",
      "matters-d-prime",
    ],
    [["match", "--glasses=5", "--right=1", "--pours=2,2"], "pours_do_not_add_up", "pours"],
    [["differ", "in-turn", "--test=triangle", "--results=RX"], "results_unreadable", "results"],
    [["could-show", "differ", "--test=triangle", "--of=9"], "flag_missing", "share"],
    [["rank"], "flag_missing", "file"],
  ] as const) {
    const told = await here.run([...argv, "--json"]);
    expect([told.code, issuesOf(told)[0]?.code, issuesOf(told)[0]?.path[0]]).toEqual([2, code, flag]);
  }
});

test("tests and answers are read as people write them", () => {
  for (const text of ["duo-trio", "Duo trio", "duo_trio"])
    expect(readTest(text)).toMatchObject({ value: "duo_trio" });
  expect(readTest("2 out of 5")).toMatchObject({ value: "two_out_of_five" });
  expect(readTest("constructor").ok).toBe(false);
  expect(readResults("++-")).toMatchObject({ value: [true, true, false] });
});
