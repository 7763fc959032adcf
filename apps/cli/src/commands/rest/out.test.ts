import type { Rest } from "@partsproof/house/protocol";
import { afterAll, beforeAll, expect, test } from "vitest";
import { type CliAt, cliAt, refusalsOf } from "../../fixtures/cli.ts";

let at: CliAt;
beforeAll(async () => {
  at = await cliAt();
});
afterAll(() => at[Symbol.asyncDispose]());

const refused = async (...args: readonly string[]) => refusalsOf(await at.run([...args, "--json"]));
const OUT = ["rest", "out", "First try"] as const;
const isIn = ({ oak }: Rest): string[] =>
  oak.map(({ count, outAt }) => `${count} ${outAt === null ? "in" : "out"}`);

test("rest out takes one piece, or some of several; which, where several can be meant", {
  timeout: 120_000,
}, async () => {
  await at.ask("household", "add", "Kitchen table");
  const rye = ["--maker", "Dunnage Row", "--name", "Barn Door", "--strength", "62.4"];
  await at.ask("shelf", "add", ...rye);
  await at.ask("shelf", "add", "--maker", "Ninepenny Mill", "--name", "Sweet Sack", "--strength", "46");
  const slots = ["--slot", "2@Barn Door", "--slot", "1@Sweet Sack", "--rest", "0"];
  await at.ask("recipe", "add", "--name", "Two to one", ...slots);
  const vessel = ["--vessel-label", "Flask", "--capacity", "500ml"];
  await at.ask(
    "batch",
    "add",
    "--recipe",
    "Two to one",
    "--final",
    "300ml",
    "--name",
    "First try",
    ...vessel,
  );
  await at.ask("rest", "begin", "First try", "--oak", "--pull", "wood.toasted=6");
  expect(await refused(...OUT)).toEqual(["flag_missing piece"]);
  await at.ask("rest", "oak", "First try", "--piece", "stick=10x10x70mm", "--count", "3");
  const two: Rest = await at.ask("rest", "oak", "First try", "--area", "20cm2");
  expect(isIn(two)).toEqual(["3 in", "1 in"]);
  expect(await refused(...OUT)).toEqual(["flag_missing piece"]);
  expect(await refused(...OUT, "--piece", "3")).toEqual(["unknown_piece piece"]);
  expect(await refused(...OUT, "--piece", "1", "--count", "4")).toEqual(["count_too_large count"]);
  expect(await refused(...OUT, "--piece", "1", "--loss", "900ml")).toEqual(["vessel_short loss"]);
  const some: Rest = await at.ask(...OUT, "--piece", "1", "--count", "2", "--loss", "2ml");
  expect(isIn(some).toSorted()).toEqual(["1 in", "1 in", "2 out"]);
  expect(some.endedAt).toBeNull();
  const told = await at.run(["rest", "show", "First try"]);
  expect(told.stdout).toMatch(/2 sticks: .*; in \d{4}-\d\d-\d\d, out \d{4}-\d\d-\d\d/);
  // Out is one thing alone, so it need not be named.
  const back: Rest = await at.ask(...OUT, "--still-in");
  expect(isIn(back).toSorted()).toEqual(["1 in", "1 in", "2 in"]);
  expect(await refused(...OUT, "--still-in")).toEqual(["flag_missing piece"]);
  for (const number of ["1", "2", "3"]) await at.ask(...OUT, "--piece", number);
  const none = await at.run(["rest", "show", "First try"]);
  expect(none.stdout).toMatch(/Wood in +\d{4}-\d\d-\d\d, all of it out by \d{4}-\d\d-\d\d/);
  expect(none.stdout).toContain(
    "All of its wood is out, and nothing more is drawn: put more in, or end the rest.",
  );
  expect(none.stdout).toContain("untreated, food-grade oak");
});
