import { Meaning } from "@partsproof/house/protocol";
import { findTaster } from "../../door/index.ts";
import { needed, one, readText, readWord } from "../../flags/index.ts";
import { printWords } from "../../print/words.ts";
import { householdCommand } from "../command.ts";

const means = readWord("means", Meaning.options);

export const wordList = householdCommand({
  name: "word list",
  says: "The household's own words: what is meant by them, and who taught them.",
  flags: {},
  example: "word list",
  run: async (_given, { client, household }) => {
    const json = await client("listWords", { at: { household: household.id } });
    return { json, text: () => printWords(json.items) };
  },
});

export const wordTeach = householdCommand({
  name: "word teach",
  says: "Say what is meant by a phrase, or that it is no flavour; --instead to change it.",
  args: { phrase: "one to nine words" },
  flags: {
    means: needed(means, "<attribute>", "an attribute such as wood.old, or nothing"),
    instead: one(readWord("instead", Meaning.options), "<attribute>", "what it means now"),
    taster: one(readText("taster"), "<taster>", "whose word it is, by id or name"),
  },
  example: `word teach "grandad's shed" --means wood.old --taster Ilka`,
  places: { tasterId: "taster" },
  run: async ({ args, flags }, here) => {
    const tasterId =
      flags.taster === undefined ? null : (await findTaster(here, flags.taster, ["taster"])).id;
    const word = await here.client("teachWord", {
      at: { household: here.household.id },
      body: {
        phrase: args.phrase,
        means: flags.means,
        tasterId,
        ...(flags.instead === undefined ? {} : { instead: flags.instead }),
      },
    });
    return { json: word, text: () => printWords([word]) };
  },
});

export const wordForget = householdCommand({
  name: "word forget",
  says: "Forget a phrase: it is read as anybody would.",
  args: { phrase: "as it was taught" },
  flags: {},
  example: `word forget "grandad's shed"`,
  run: async ({ args }, { client, household }) => {
    const at = { household: household.id };
    const word = await client("forgetWord", { at, body: { phrase: args.phrase } });
    return { json: word, text: () => printWords([word]) };
  },
});
