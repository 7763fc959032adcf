import type { SearchWhiskey } from "@partsproof/house/protocol";
import { readJsonFile } from "../../files/index.ts";
import { issueAt, one, readText, refuse } from "../../flags/index.ts";
import { printPurchases, printRulePrices, printTradeOff } from "../../print/around-search.ts";
import { fileCommand } from "../command.ts";
import { askedProblem, secondsOf } from "./asked-problem.ts";
import { fileFlag, ofFlag, secondsFlag, shelfFlags } from "./search-flags.ts";

const flags = { file: fileFlag, ...shelfFlags, seconds: secondsFlag };

export const searchTradeOff = fileCommand({
  name: "search trade-off",
  says: "Every recipe that nothing beats in closeness and in price, bottles, parts or age as well.",
  flags: { of: ofFlag, ...flags },
  example: "search trade-off --of bottles --file problem.json",
  run: async (given, here) => {
    const { client, problem, words } = await askedProblem(given, here);
    const of = given.of ?? "price";
    const query = { of, ...secondsOf(given.seconds) };
    const json = await client("searchTradeOff", { body: problem, query });
    return { json, text: () => printTradeOff(json, of, words) };
  },
});

export const searchRules = fileCommand({
  name: "search rules",
  says: "What each rule costs: how much closer the best would be without it.",
  flags,
  example: "search rules --file problem.json",
  run: async (given, here) => {
    const { client, problem, words } = await askedProblem(given, here);
    const json = await client("searchRules", { body: problem, query: secondsOf(given.seconds) });
    return { json, text: () => printRulePrices(json, words) };
  },
});

export const searchBuy = fileCommand({
  name: "search buy",
  says: "Which one more bottle helps most, and which on the shelf is never needed.",
  flags: {
    ...flags,
    candidates: one(
      readText("candidates"),
      "<file>",
      "bottles to choose from, a JSON list of whiskeys; in a household, else those known and not there",
    ),
  },
  example: `search buy --like "Lamplighter's Rest"`,
  run: async (given, here) => {
    const { client, problem, candidates: known, words } = await askedProblem(given, here);
    const { candidates: file } = given;
    if (given.file !== undefined && file === undefined)
      refuse(issueAt(["candidates"], "flag_missing", "--candidates <file>", null));
    const candidates = (
      file === undefined ? known : await readJsonFile(file, ["candidates"])
    ) as SearchWhiskey[];
    const body = { problem, candidates: [...candidates] };
    const json = await client("searchPurchases", { body, query: secondsOf(given.seconds) });
    return { json, text: () => printPurchases(json, words) };
  },
});
