import { SEARCH_LIMITS } from "@partsproof/house/protocol";
import { readJsonFile } from "../../files/index.ts";
import { issueAt, one, readNumber, readText, refuse } from "../../flags/index.ts";
import { printSearch } from "../../print/search.ts";
import { fileCommand } from "../command.ts";

export const secondsFlag = one(
  readNumber("seconds", 0.01, SEARCH_LIMITS.seconds, "s"),
  "<0.01 to 60>",
  "how long it may search, 10 where left out; then the best so far and the proven gap",
);

export const search = fileCommand({
  name: "search",
  says: "The closest recipes for a target within rules, proven best or with the proven gap.",
  flags: {
    file: one(readText("file"), "<file>", "a problem as JSON: docs/search.md says what stands in it"),
    seconds: secondsFlag,
  },
  example: "search --file problem.json",
  run: async ({ file, seconds }, { client }) => {
    if (file === undefined) refuse(issueAt(["file"], "flag_missing", "--file <file>", null));
    const body = await readJsonFile(file, ["file"]);
    const query = seconds === undefined ? {} : { seconds };
    // Not read by us: the house's schema says what is wrong with it, field by field.
    const json = await client("search", { body: body as never, query });
    return { json, text: () => printSearch(json) };
  },
});
