import type { Handlers } from "../handler.ts";
import { knownHousehold } from "../known.ts";
import { shelfState } from "../shelf/index.ts";
import { learnedMixing, readMixing } from "./learned-here.ts";

/** Reads first and reckons after: nobody waits for sums in the middle of a transaction. */
export const mixingHandlers: Handlers<"getMixing"> = {
  getMixing: async ({ house, at }) => {
    const { shelf, read } = await house.store.transaction(async (records) => {
      await knownHousehold(records, at.household);
      return {
        shelf: await shelfState(records, at.household),
        read: await readMixing(house, records, at.household),
      };
    });
    return learnedMixing(house, shelf, read);
  },
};
