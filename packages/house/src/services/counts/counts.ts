import type { Handlers } from "../handler.ts";
import { countsCouldShow } from "./could-show.ts";
import { countsDiffer } from "./differ.ts";
import { countsInTurn } from "./in-turn.ts";
import { countsMatch } from "./match.ts";
import { countsMixture } from "./mixture.ts";
import { countsPairs } from "./pairs.ts";
import { countsRank } from "./rank.ts";

type Asked =
  | "countsDiffer"
  | "countsInTurn"
  | "countsMatch"
  | "countsRank"
  | "countsPairs"
  | "countsMixture"
  | "countsCouldShow";

/** What numbers show: they ask nothing of the house and nothing is kept. Every number is core's. */
export const countsHandlers: Handlers<Asked> = {
  countsDiffer: async ({ body }) => countsDiffer(body),
  countsInTurn: async ({ body }) => countsInTurn(body),
  countsMatch: async ({ body }) => countsMatch(body),
  countsRank: async ({ body }) => countsRank(body),
  countsPairs: async ({ body }) => countsPairs(body),
  countsMixture: async ({ body }) => countsMixture(body),
  countsCouldShow: async ({ body }) => countsCouldShow(body),
};
