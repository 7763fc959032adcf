import { readTextFile, writeWhole } from "../../files/index.ts";
import { one, onlyOne, readText } from "../../flags/index.ts";
import { printJson } from "../../print/json.ts";
import { reckoning } from "../command.ts";

export const recipeOpen = reckoning({
  name: "recipe open",
  says: "The recipe in a link, a page or a file that was passed on. Nothing is fetched: all of it stands there.",
  maybe: { link: "the link, whatever host it names; or --from" },
  flags: {
    from: one(readText("from"), "<file>", "a page or a file with a link in it; - for standard input"),
    to: one(readText("to"), "<file>", "where the recipe file is written: one that is not there yet"),
  },
  places: { text: "link" },
  example: 'recipe open "http://127.0.0.1:4480/passed-on#1.eJx…" --to from-a-friend.json',
  run: async ({ from, to }, client, { link }) => {
    onlyOne({ link, from });
    const text = link ?? (await readTextFile(from ?? "", ["from"]));
    const opened = await client("openRecipe", { body: { text } });
    const { name, slots } = opened.recipe;
    const said = `${name}: ${slots.map(({ parts }) => parts).join(" : ")}, SHA-256 ${opened.check.sha256}`;
    if (to === undefined) return { json: opened, text: () => `${said}\n${printJson(opened.recipe)}` };
    await writeWhole(to, `${printJson(opened.recipe)}\n`, ["to"]);
    return { json: opened, text: () => `${said}\nThe recipe file: ${to}` };
  },
});
