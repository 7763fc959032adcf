import type { BodyOf } from "@partsproof/house/protocol";
import { readJsonFile } from "../../files/index.ts";
import { needed, one, readNumber, readText } from "../../flags/index.ts";
import { printRest } from "../../print/rest.ts";
import { reckoning } from "../command.ts";

export const rest = reckoning({
  name: "rest",
  says: "How long the oak may stay: when to taste, when it is likely ready, when the oak leads.",
  flags: {
    file: needed(
      readText("file"),
      "<file>",
      "the rule, the wood and what was tasted, as JSON: docs/guide/rest.md",
    ),
    today: one(
      readNumber("today", 0, 3650, "days"),
      "<days>",
      "since the oak went in; else as the file says",
    ),
  },
  example: "rest --file rest.json",
  run: async ({ file, today }, client) => {
    const held = await readJsonFile(file, ["file"]);
    const open = typeof held === "object" && held !== null && !Array.isArray(held);
    const body = (open && today !== undefined ? { ...held, today } : held) as NonNullable<BodyOf<"rest">>;
    const json = await client("rest", { body });
    return { json, text: () => printRest(json) };
  },
});
