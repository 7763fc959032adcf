export { FEWEST_MIXES, MEAN_BEFOREHAND, ODDS_NEEDED } from "./laws.data.ts";
export { mixingInWords } from "./in-words.ts";
export { learnMixing, type MixingLaw, type MixingLawName } from "./learn-mixing.ts";
export type { NotedLevel, NotedMix, NotedMixes } from "./noted-mix.ts";
