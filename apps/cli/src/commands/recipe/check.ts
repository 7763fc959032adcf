import type { BodyOf, RecipeCheck } from "@partsproof/house/protocol";
import { readJsonFile } from "../../files/index.ts";
import { issueAt, refuse } from "../../flags/index.ts";
import { reckoning } from "../command.ts";

export const recipeCheck = reckoning({
  name: "recipe check",
  says: "Whether a file is a recipe file, its hash, and its rules as they are read.",
  maybe: { file: "a recipe file: docs/recipe-file.md" },
  flags: {},
  example: "recipe check saltreach-recipe.json",
  run: async (_, client, { file }) => {
    if (file === undefined) return refuse(issueAt(["file"], "argument_missing", "a recipe file", null));
    const json = await client("checkRecipe", {
      body: (await readJsonFile(file, ["file"])) as BodyOf<"checkRecipe">,
    });
    return { json, text: () => printCheck(json) };
  },
});

const printCheck = ({ name, version, sha256, bytes, rules, unknownFields }: RecipeCheck): string =>
  [
    `${name}: a recipe file, version ${version}`,
    `SHA-256  ${sha256}, of ${bytes} bytes in canonical form`,
    ...rules.map((rule, n) => `Slot ${n + 1}   ${rule ?? "the named whiskey"}`),
    ...(unknownFields.length > 0 ? [`Kept, though not known here: ${unknownFields.join(", ")}`] : []),
  ].join("\n");
