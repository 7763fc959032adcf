import { printRested } from "../../print/rested.ts";
import { householdCommand } from "../command.ts";
import { batchArg, findRest } from "./of-batch.ts";

export const restShow = householdCommand({
  name: "rest show",
  says: "A batch's rest: the wood, what was tasted, when to taste next, when it is likely ready.",
  args: batchArg,
  flags: {},
  example: 'rest show "First try"',
  run: async ({ args }, here) => {
    const rest = await findRest(here, args.batch);
    const at = { household: here.household.id, rest: rest.id };
    const advice = await here.client("adviseRest", { at });
    return { json: { rest, advice }, text: () => printRested(rest, advice) };
  },
});
