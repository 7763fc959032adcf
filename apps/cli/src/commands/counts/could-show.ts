import type { BodyOf } from "@partsproof/house/protocol";
import { needed, one, readWhole } from "../../flags/index.ts";
import { printCouldShow } from "../../print/counts.ts";
import { reckoning } from "../command.ts";
import {
  alphaFlag,
  betaFlag,
  dPrimeFlag,
  given,
  needEffect,
  readNumbers,
  readTest,
  shareFlag,
  TESTS,
} from "./counts-flags.ts";
import { glassBody, glassFlags } from "./match.ts";

const testFlag = needed(readTest, TESTS, "the difference test");
const effectFlags = {
  share: shareFlag("the difference that is there, as a share that can tell while the rest guess"),
  "d-prime": dPrimeFlag("the same as a distance"),
};
const effectPlaces = { "effect.dPrime": "d-prime", "effect.share": "share" };

type Client = Parameters<Parameters<typeof reckoning>[0]["run"]>[1];
async function answer(client: Client, body: BodyOf<"countsCouldShow">) {
  const json = await client("countsCouldShow", { body });
  return { json, text: () => printCouldShow(json) };
}

export const couldShowDiffer = reckoning({
  name: "could-show differ",
  says: "Before a flight: what so many answers of a difference test could show, and how many it takes.",
  flags: {
    test: testFlag,
    of: needed(readWhole("of", 1, 10_000), "<count>", "answers there will be"),
    ...effectFlags,
    alpha: alphaFlag,
    beta: betaFlag,
  },
  example: "could-show differ --test triangle --of 12 --share 0.5",
  places: { ...effectPlaces, trials: "of" },
  run: async ({ test, of, share, "d-prime": dPrime, alpha, beta }, client) =>
    answer(client, {
      of: "differ",
      test,
      trials: of,
      effect: needEffect(share, dPrime),
      ...given({ alpha, beta }),
    }),
});

export const couldShowInTurn = reckoning({
  name: "could-show in-turn",
  says: "The same for answers one at a time, with how many it takes on average.",
  flags: {
    test: testFlag,
    most: needed(readWhole("most", 1, 500), "<count>", "answers after which one gives up"),
    ...effectFlags,
    alpha: alphaFlag,
    beta: betaFlag,
  },
  example: "could-show in-turn --test triangle --most 40 --share 0.5",
  places: { ...effectPlaces, trials: "most" },
  run: async ({ test, most, share, "d-prime": dPrime, alpha, beta }, client) =>
    answer(client, {
      of: "in-turn",
      test,
      trials: most,
      effect: needEffect(share, dPrime),
      ...given({ alpha, beta }),
    }),
});

export const couldShowMatch = reckoning({
  name: "could-show match",
  says: "Before a flight: whether somebody who knows some of the glasses would be found out to know them.",
  flags: {
    ...glassFlags,
    known: needed(readWhole("known", 1, 60), "<count>", "glasses of each sheet that are really known"),
    alpha: alphaFlag,
  },
  example: "could-show match --glasses 5 --known 2 --sheets 4",
  run: async ({ known, alpha, ...glasses }, client) =>
    answer(client, { of: "match", ...glassBody(glasses), known, ...given({ alpha }) }),
});

export const couldShowRank = reckoning({
  name: "could-show rank",
  says: "Before a flight: whether so many rankings would agree beyond luck, by simulation that repeats itself.",
  flags: {
    worths: needed(
      readNumbers("worths", -10, 10),
      "<1,0.5,0,0>",
      "how much each glass is liked, as natural logs; 1 apart is chosen before the other 73 times in 100",
    ),
    sheets: needed(readWhole("sheets", 1, 200), "<count>", "rankings there will be"),
    alpha: alphaFlag,
    flights: one(readWhole("flights", 100, 4000), "<100 to 4000>", "how many are drawn, 1000 where left out"),
  },
  example: "could-show rank --worths 1,0,0,0 --sheets 8",
  places: { logWorth: "worths" },
  run: async ({ worths, sheets, alpha, flights }, client) =>
    answer(client, { of: "rank", logWorth: [...worths], sheets, ...given({ alpha, flights }) }),
});
