import type { PlacesFound, RecipeResults, ResultPreview } from "@partsproof/house/protocol";
import { findRecipe } from "../../door/index.ts";
import { readTextFile, writeWhole } from "../../files/index.ts";
import { issueAt, one, readAddress, readAnyText, readText, refuse, yes } from "../../flags/index.ts";
import { householdCommand } from "../command.ts";

export const recipeResult = householdCommand({
  name: "recipe result",
  says: "What came of a recipe that was passed on, as a document to send back. Tasters are numbers; no name goes out unless asked for.",
  args: { recipe: "id or name" },
  flags: {
    to: one(readText("to"), "<file>", "a file that is not there yet; - for standard output"),
    link: yes("as a link that holds all of it"),
    at: one(readAddress, "<address>", "the address the link names; any house opens it all the same"),
    kitchen: one(readText("kitchen"), "<name>", "what this kitchen is to be called"),
    notes: one(readAnyText, "<text>", "what you say of it"),
    "no-whiskeys": yes("without the names of what stood in the lines"),
    "with-beside": yes("with the names of what stood beside it in the flights"),
  },
  places: { address: "at" },
  example: 'recipe result "Two to one, from this shelf" --to result.json',
  run: async ({ args, flags }, here) => {
    if (flags.to === undefined && !flags.link)
      refuse(issueAt(["to"], "flag_missing", "--to <file>, --link, or both", null));
    const { id, name } = await findRecipe(here, args.recipe, ["recipe"]);
    const made = await here.client("makeResult", {
      at: { household: here.household.id, recipe: id },
      body: {
        ...(flags.kitchen === undefined ? {} : { kitchen: flags.kitchen }),
        ...(flags.notes === undefined ? {} : { notes: flags.notes }),
        withWhiskeys: !flags["no-whiskeys"],
        withBeside: flags["with-beside"],
        ...(flags.at === undefined ? {} : { address: flags.at }),
      },
    });
    if (flags.link && made.link === null)
      refuse(
        issueAt(["link"], "link_too_long", "a result that a link holds; --to writes it as a file", null),
      );
    const link = flags.link ? made.link : null;
    if (flags.to === undefined) return { json: { link, sha256: made.sha256 }, text: () => link ?? "" };
    if (flags.to === "-") return { json: made.result, text: () => made.canonical };
    const bytes = await writeWhole(flags.to, `${made.canonical}\n`, ["to"]);
    return {
      json: { file: flags.to, bytes, sha256: made.sha256, recipe: name, ...(link === null ? {} : { link }) },
      text: () => `What came of ${made.result.recipe.name}: ${flags.to}${link === null ? "" : `\n${link}`}`,
    };
  },
});

export const recipeTakeInResult = householdCommand({
  name: "recipe take-in-result",
  says: "What a result says that somebody sent back; with --yes it is pooled for its recipe.",
  args: { file: "a result file (docs/result-file.md), or the link that was sent" },
  flags: {
    recipe: one(
      readText("recipe"),
      "<recipe>",
      "which recipe it is of, where none went out with the hash it names",
    ),
    yes: yes("take it in; else it is only looked at"),
  },
  places: { result: "file", text: "file", recipeId: "recipe" },
  example: "recipe take-in-result saltreach-result.json",
  run: async ({ args, flags }, here) => {
    const at = { household: here.household.id };
    const isLink = /^https?:\/\/|#1\./u.test(args.file);
    const text = isLink ? args.file : await readTextFile(args.file, ["file"]);
    const seen = await here.client("previewResult", { at, body: { text } });
    const { result } = seen;
    if (!flags.yes) return { json: seen, text: () => printSeen(seen) };
    const named = flags.recipe === undefined ? null : await findRecipe(here, flags.recipe, ["recipe"]);
    const body = { result, sha256: seen.sha256, ...(named === null ? {} : { recipeId: named.id }) };
    const pooled = await here.client("takeInResult", { at, body });
    return { json: pooled, text: () => printPooled(pooled) };
  },
});

export const recipeResults = householdCommand({
  name: "recipe results",
  says: "What kitchens found of a recipe, this one and those that sent a result, each and together.",
  args: { recipe: "id or name" },
  flags: { drop: one(readText("drop"), "<id>", "take this result out again first") },
  places: { result: "drop" },
  example: 'recipe results "Two to one"',
  run: async ({ args, flags }, here) => {
    const { id } = await findRecipe(here, args.recipe, ["recipe"]);
    const at = { household: here.household.id, recipe: id };
    const pooled =
      flags.drop === undefined
        ? await here.client("getRecipeResults", { at })
        : await here.client("removeResult", { at: { ...at, result: flags.drop } });
    return { json: pooled, text: () => printPooled(pooled) };
  },
});

const printSeen = (seen: ResultPreview): string =>
  [
    `What came of ${seen.recipe.name}, from ${seen.kitchen ?? "a kitchen that gave no name"}`,
    `${seen.flights} blind flights, ${seen.sheets} rankings by ${seen.tasters} tasters`,
    ...seen.slots.map(({ slot, parts, label }) => `  ${slot}  ${parts} of ${label ?? "not told"}`),
    ...(seen.notes === "" ? [] : [seen.notes]),
    seen.about === null
      ? "No file with the hash it names went out from here: --recipe says which one it is of."
      : `It is of ${seen.about.name}`,
    seen.already ? "It is here already." : "Nothing is kept yet: --yes takes it in.",
  ].join("\n");

const places = (found: PlacesFound | null): string[] =>
  found === null ? [] : [`  ${found.sentence} (p = ${found.luck.p.toFixed(3)})`];

const printPooled = (pooled: RecipeResults): string =>
  [
    `${pooled.name}: ${pooled.headline}`,
    ...pooled.kitchens.flatMap((kitchen) => [
      `${kitchen.resultId === null ? "Here" : (kitchen.kitchen ?? "A kitchen that gave no name")}${kitchen.resultId === null ? "" : `  ${kitchen.resultId}`}`,
      ...places(kitchen.liked),
      ...places(kitchen.close),
      ...(kitchen.notes === "" ? [] : [`  ${kitchen.notes}`]),
    ]),
    ...pooled.said,
  ].join("\n");
