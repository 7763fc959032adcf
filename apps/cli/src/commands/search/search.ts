import { ofHousehold, printSearch } from "../../print/search.ts";
import { fileCommand } from "../command.ts";
import { askedProblem, needAim, secondsOf, shelfBody } from "./asked-problem.ts";
import { fileFlag, secondsFlag, shelfFlags } from "./search-flags.ts";

export const search = fileCommand({
  name: "search",
  says: "The closest recipes for a target within rules, proven best or with the proven gap.",
  flags: { file: fileFlag, ...shelfFlags, seconds: secondsFlag },
  example: `search --like "Lamplighter's Rest" --not-gone --max-bottles 3`,
  run: async (given, here) => {
    const query = secondsOf(given.seconds);
    if (given.file !== undefined) {
      const { client, problem, words } = await askedProblem(given, here);
      const json = await client("search", { body: problem, query });
      return { json, text: () => printSearch(json, words) };
    }
    needAim(given);
    const at = await here.at();
    const body = await shelfBody(given, at);
    const json = await at.client("searchShelf", { at: { household: at.household.id }, body, query });
    return { json, text: () => printSearch(json, ofHousehold(json)) };
  },
});
