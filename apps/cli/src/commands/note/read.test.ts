import { writeFile } from "node:fs/promises";
import { join } from "node:path";
import { expect, test } from "vitest";
import { cliAt, issuesOf } from "../../fixtures/cli.ts";

const note = "Nose: a hint of smoke. Palate: plum, no, cherry.";

test("a note on the line and the same note in a file say the same", async () => {
  await using here = await cliAt();
  const typed: { observations: { attribute: string }[] } = await here.ask("read", note);
  expect(typed.observations.map(({ attribute }) => attribute)).toEqual(["smoke.smoke", "fruit.stone"]);
  const file = join(here.data, "note.txt");
  await writeFile(file, note);
  expect(await here.ask("read", "--file", file)).toEqual(typed);
  const shown = await here.run(["read", note]);
  expect(shown.stdout).toMatch(/smoke +smoke\.smoke +nose +2\.2 +present/);
});

test("the part of the tasting is one of four; a note is needed, once, and readable", async () => {
  await using here = await cliAt();
  const where: { observations: { where: string }[] } = await here.ask("read", "oak", "--where", "finish");
  expect(where.observations[0]?.where).toBe("finish");
  const refused = async (...argv: readonly string[]) => {
    const ran = await here.run(["read", ...argv, "--json"]);
    expect(ran.code).toBe(2);
    return issuesOf(ran)[0];
  };
  expect(await refused()).toMatchObject({ code: "flag_missing" });
  expect(await refused("oak", "--file", "x")).toMatchObject({ code: "flags_exclude" });
  expect(await refused("--file", join(here.data, "none.txt"))).toMatchObject({ code: "file_not_read" });
  expect(await refused("oak", "--where", "ear")).toMatchObject({ code: "unknown_word", path: ["where"] });
  expect(await refused("a".repeat(20_001))).toMatchObject({
    path: ["text"],
    limit: expect.stringContaining("20000"),
  });
});
