import { readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import type { SearchAnswer, SearchProblem, ShelfSearchAnswer } from "@partsproof/house/protocol";
import { expect, test } from "vitest";
import { cliAt, issuesOf, root } from "../../fixtures/cli.ts";

const example = join(root, "docs", "saltreach-problem.json");
const untimed = <T extends { readonly elapsedMs: number }>({ elapsedMs: _, ...answer }: T) => answer;

test("SF2 a file is answered with the format's own fields, the same in a process of its own", async () => {
  await using here = await cliAt();
  const answer: SearchAnswer = await here.json("search", "--file", example);
  expect(answer).toMatchObject({ provenOptimal: true, gap: 0 });
  expect(answer.nodes).toBeGreaterThan(0);
  expect(answer.recipes).toHaveLength(5);
  expect(answer.recipes[0]).toMatchObject({
    parts: [
      { id: "full-kettle", parts: 1 },
      { id: "long-simmer", parts: 1 },
      { id: "barn-door", parts: 1 },
    ],
    distance: expect.closeTo(0.577, 3),
    abv: expect.closeTo(54.67, 2),
    pricePerLitre: expect.closeTo((111.43 + 127.14 + 92) / 3, 9),
  });
  expect(untimed(answer)).toEqual(untimed((await here.ask("search", "--file", example)) as SearchAnswer));
});

test("SF5 an impossible problem ends well and names the rules", async () => {
  await using here = await cliAt();
  const problem = JSON.parse(await readFile(example, "utf8")) as SearchProblem;
  const file = join(here.data, "impossible.json");
  await writeFile(file, JSON.stringify({ ...problem, rules: { ...problem.rules, minAgeYears: 40 } }));
  const { code, stdout } = await here.run(["search", "--file", file, "--json"]);
  expect(code).toBe(0);
  expect(JSON.parse(stdout)).toMatchObject({ recipes: [], conflict: ["minAgeYears"] });
});

test("SF4 what the format has not is refused at its place, and so is a search for nothing", async () => {
  await using here = await cliAt();
  const problem = JSON.parse(await readFile(example, "utf8")) as SearchProblem;
  const file = join(here.data, "wrong.json");
  await writeFile(file, JSON.stringify({ ...problem, rules: { ...problem.rules, minAge: 6 } }));
  const wrong = await here.run(["search", "--file", file, "--json"]);
  expect(wrong.code).toBe(2);
  expect(issuesOf(wrong)[0]).toMatchObject({ code: "unknown_field", path: ["rules", "minAge"], received: 6 });
  const nothing = await here.run(["search", "--json"]);
  expect(issuesOf(nothing)[0]).toMatchObject({ code: "flag_missing", path: ["file"] });
  const upside = await here.run(["search", "--like", "x", "--abv", "50-40", "--json"]);
  expect(issuesOf(upside)[0]).toMatchObject({ code: "range_upside_down", path: ["abv"] });
});

test("SF2 a household is searched by flags, in threads, as its problem is in this one", async () => {
  await using here = await cliAt();
  await here.ask("demo", "load");
  const flags = [
    "--like",
    "Lamplighter's Rest",
    "--not-gone",
    "--change",
    "spice.sharp=1",
    "--keep",
    "Old Loft",
  ];
  const answer: ShelfSearchAnswer = await here.ask("search", ...flags, "--abv", "46-58", "--top", "4");
  expect(answer.target.profile["spice.sharp"]).toBe(6);
  expect(answer.recipes).toHaveLength(4);
  for (const { abv } of answer.recipes) {
    expect(abv).toBeGreaterThanOrEqual(46);
    expect(abv).toBeLessThanOrEqual(58);
  }
  const prices: { best: unknown; rules: { rule: string }[] } = await here.ask(
    "search",
    "rules",
    ...flags,
    "--abv",
    "46-58",
  );
  expect(prices.best).toEqual({ ...answer.recipes[0], firstIsCloser: null });
  expect(prices.rules.map(({ rule }) => rule).toSorted()).toEqual(["abv", "keep", "notGone"]);
  const target = join(here.data, "target.json");
  await writeFile(
    target,
    JSON.stringify({ profile: { "smoke.smoke": 4 }, rules: { maxBottles: 1, maxParts: 1 } }),
  );
  const one: ShelfSearchAnswer = await here.ask("search", "--target", target, "--top", "1");
  expect(one.recipes[0]?.parts).toHaveLength(1);
});
