import { COUNTS_LIMITS } from "@partsproof/house/protocol";
import { needed, one, readWhole } from "../../flags/index.ts";
import { printDiffer, printInTurn } from "../../print/counts.ts";
import { reckoning } from "../command.ts";
import {
  alphaFlag,
  betaFlag,
  dPrimeFlag,
  effectOf,
  given,
  levelFlag,
  readResults,
  readTest,
  shareFlag,
  TESTS,
} from "./counts-flags.ts";

const testFlag = needed(readTest, TESTS, "the difference test; 2-AFC is the paired comparison");

export const differ = reckoning({
  name: "differ",
  says: "What right answers of a difference test show: exact p, how far apart, and likeness where asked.",
  flags: {
    test: testFlag,
    right: needed(readWhole("right", 0, COUNTS_LIMITS.trials), "<count>", "right answers"),
    of: needed(readWhole("of", 1, COUNTS_LIMITS.trials), "<count>", "answers in all"),
    sides: one(readWhole("sides", 1, 2), "<1|2>", "2 for a paired comparison of which nothing was expected"),
    level: levelFlag,
    matters: shareFlag("is the difference smaller than one that this share can tell?"),
    "matters-d-prime": dPrimeFlag("the same for a distance"),
  },
  example: "differ --test triangle --right 10 --of 15",
  places: { "matters.dPrime": "matters-d-prime", "matters.share": "matters" },
  run: async (flags, client) => {
    const { test, right, of, sides, level } = flags;
    const matters = effectOf(flags.matters, flags["matters-d-prime"], "matters-d-prime", "matters");
    const body = { test, right, of, ...given({ sides: sides as 1 | 2 | undefined, level, matters }) };
    const json = await client("countsDiffer", { body });
    return { json, text: () => printDiffer(json) };
  },
});

export const differInTurn = reckoning({
  name: "differ in-turn",
  says: "The same for answers one at a time: valid whenever one stops, and whether to go on.",
  flags: {
    test: testFlag,
    results: needed(readResults, "<RRWR…>", "the answers in their order: R for right, W for wrong"),
    share: shareFlag("the difference to be found, as a share that can tell; 0.5 where left out"),
    "d-prime": dPrimeFlag("the same as a distance"),
    alpha: alphaFlag,
    beta: betaFlag,
    level: levelFlag,
  },
  example: "differ in-turn --test triangle --results RRWRRR",
  places: { "effect.dPrime": "d-prime", "effect.share": "share" },
  run: async ({ test, results, share, "d-prime": dPrime, alpha, beta, level }, client) => {
    const effect = effectOf(share, dPrime);
    const body = { test, results: [...results], ...given({ effect, alpha, beta, level }) };
    const json = await client("countsInTurn", { body });
    return { json, text: () => printInTurn(json) };
  },
});
