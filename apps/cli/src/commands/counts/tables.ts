import { type BodyOf, MixtureModelName } from "@partsproof/house/protocol";
import { readJsonFile } from "../../files/index.ts";
import { needed, one, readText, readWord } from "../../flags/index.ts";
import { printMixture, printPairs, printRank } from "../../print/counts.ts";
import { reckoning } from "../command.ts";
import { given, levelFlag } from "./counts-flags.ts";

const fileFlag = (what: string) => needed(readText("file"), "<file>", `${what} as JSON: docs/counts.md`);

/** The file as it is, with what was typed over it: the house's schema says what is wrong with it, field by field. */
async function bodyOf<T>(file: string, over: object): Promise<T> {
  const held = await readJsonFile(file, ["file"]);
  const open = typeof held === "object" && held !== null && !Array.isArray(held);
  return (open ? { ...held, ...over } : held) as T;
}

export const rank = reckoning({
  name: "rank",
  says: "What rankings show: whether they agree, the most likely worths, and what to believe.",
  flags: { file: fileFlag("items and rankings"), level: levelFlag },
  example: "rank --file rankings.json",
  run: async ({ file, level }, client) => {
    const body = await bodyOf<BodyOf<"countsRank">>(file, given({ level }));
    const json = await client("countsRank", { body });
    return { json, text: () => printRank(json) };
  },
});

export const pairs = reckoning({
  name: "pairs",
  says: "What comparisons of two show: worths, ties, the effect of coming first.",
  flags: { file: fileFlag("items and who beat whom"), level: levelFlag },
  example: "pairs --file wins.json",
  run: async ({ file, level }, client) => {
    const body = await bodyOf<BodyOf<"countsPairs">>(file, given({ level }));
    const json = await client("countsPairs", { body });
    return { json, text: () => printPairs(json) };
  },
});

export const mixture = reckoning({
  name: "mixture",
  says: "What a mixture is expected to give, by its shares: Scheffé's polynomial.",
  flags: {
    file: fileFlag("components and runs"),
    model: one(
      readWord("model", MixtureModelName.options),
      `<${MixtureModelName.options.join("|")}>`,
      "quadratic where left out",
    ),
    level: levelFlag,
  },
  example: "mixture --file runs.json --model quadratic",
  run: async ({ file, model, level }, client) => {
    const body = await bodyOf<BodyOf<"countsMixture">>(file, given({ model, level }));
    const json = await client("countsMixture", { body });
    return { json, text: () => printMixture(json) };
  },
});
