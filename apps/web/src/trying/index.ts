export type { Answered } from "./answer-trying.ts";
export { mapMixes } from "./map-mixes.ts";
export { useTrying } from "./use-trying.ts";
