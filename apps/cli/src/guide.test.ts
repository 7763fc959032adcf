import { copyFile, mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import process from "node:process";
import { expect, test } from "vitest";
import { commands } from "./commands/index.ts";
import { environment, root } from "./fixtures/cli.ts";
import { Drawn, guideSteps, skeleton, trimDigits } from "./fixtures/guide.ts";
import { words } from "./fixtures/words.ts";
import { runProgram } from "./program.ts";

const PROGRAM = "partsproof ";

test("the guide shows every command", () => {
  const lines = guideSteps().map(({ line }) => line);
  for (const { name } of commands) {
    expect(
      lines.filter((line) => line.startsWith(`${PROGRAM}${name} `) || line === PROGRAM + name),
      name,
    ).not.toEqual([]);
  }
});

test("every block of the guide gives what the guide shows, from the first to the last", {
  timeout: 180_000,
}, async () => {
  const folder = await mkdtemp(join(tmpdir(), "partsproof-guide-"));
  for (const file of [
    "saltreach-problem.json",
    "saltreach-candidates.json",
    "saltreach-recipe.json",
    "saltreach-shelf.json",
    "saltreach-history.json",
  ])
    await copyFile(join(root, "docs", file), join(folder, file));
  for (const file of [
    "saltreach-rankings.json",
    "saltreach-wins.json",
    "saltreach-runs.json",
    "saltreach-rest.json",
    "saltreach-bottles.csv",
  ])
    await copyFile(join(root, "examples", file), join(folder, file));
  const before = process.cwd();
  process.chdir(folder);
  try {
    const env = environment({ PARTSPROOF_DATA: join(folder, "data") });
    const drawn = new Drawn();
    for (const { line, shown, kind } of guideSteps()) {
      const typed = drawn.typed(line);
      const exported = /^export (\w+)=(.*)$/.exec(typed);
      if (exported?.[1] !== undefined) {
        env[exported[1]] = exported[2];
        continue;
      }
      const { code, stdout, stderr } = await runProgram(words(typed.slice(PROGRAM.length)), env);
      expect({ line, code, stderr: code === 0 ? "" : stderr }).toMatchObject({
        code: kind === "refused" ? 2 : 0,
      });
      const said = (kind === "refused" ? stderr : stdout).replaceAll(`${folder}/`, "").split("\n");
      const like = kind === "like";
      if (like) drawn.learn(shown, said);
      const same = like
        ? skeleton(said)
        : said.map((text, i) => trimDigits(drawn.shown(shown[i] ?? "", text)));
      expect({ line, said: same }).toEqual({ line, said: like ? skeleton(shown) : shown.map(trimDigits) });
    }
  } finally {
    process.chdir(before);
    await rm(folder, { recursive: true, force: true });
  }
});
