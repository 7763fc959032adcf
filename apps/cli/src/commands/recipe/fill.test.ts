import { writeFile } from "node:fs/promises";
import { join } from "node:path";
import type { RecipeCheck, RecipeFillAnswer } from "@partsproof/house/protocol";
import { expect, test } from "vitest";
import { cliAt, issuesOf, root } from "../../fixtures/cli.ts";

const recipe = join(root, "docs", "saltreach-recipe.json");
const shelf = join(root, "docs", "saltreach-shelf.json");

test("a recipe file is filled from a shelf's file, and checked", async () => {
  await using here = await cliAt();
  const answer: RecipeFillAnswer = await here.json(
    "fill",
    "--recipe",
    recipe,
    "--shelf",
    shelf,
    "--top",
    "2",
  );
  expect(answer).toMatchObject({ proven: true, empty: [], distance: expect.closeTo(0.211, 3) });
  expect(answer.best?.ids).toEqual(["copper-hood", "stile-end", "soft-loaf"]);
  const water: RecipeFillAnswer = await here.json(
    "fill",
    "--recipe",
    recipe,
    "--shelf",
    shelf,
    "--water-to",
    "46",
  );
  expect(water.best?.waterMl).toBeGreaterThan(200);
  const checked: RecipeCheck = await here.json("recipe", "check", recipe);
  expect(checked.sha256).toMatch(/^[0-9a-f]{64}$/u);
});

test("half a command is refused at what is missing, a wrong rule at its place", async () => {
  await using here = await cliAt();
  const bare = await here.run(["fill", "--recipe", recipe, "--json"]);
  expect(issuesOf(bare)[0]).toMatchObject({ code: "flag_missing", path: ["shelf"] });
  const vessel = await here.run(["fill", "--held", "350ml@62.4", "--json"]);
  expect(issuesOf(vessel)[0]).toMatchObject({ code: "flag_missing", path: ["with"] });
  const file = join(here.data, "wrong.json");
  const slots = [{ parts: 1, rule: "wheat > 16 %" }];
  await writeFile(file, JSON.stringify({ format: "parts-and-proof/recipe", version: 1, name: "x", slots }));
  const wrong = await here.run(["recipe", "check", file, "--json"]);
  expect(wrong.code).toBe(2);
  expect(issuesOf(wrong)[0]).toMatchObject({ path: ["slots", 0, "rule"], received: "wheat > 16 %" });
});
