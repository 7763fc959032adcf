export { answered, no, type No, short } from "./answered.ts";
export { type Carried, carriedFrom, carriedText } from "./carried.ts";
export { asTools, FIRST_TOOLS, TOOL_CHOICES, type Tools } from "./tools.ts";
export {
  type Typed,
  readCelsius,
  readGrams,
  readNumber,
  readStrengthOf,
  readVolumeOf,
} from "./read-typed.ts";
export { type Corrected, reckonCorrect, type Scale } from "./reckon-correct.ts";
export { reckonEvaporated } from "./reckon-evaporated.ts";
export { reckonLift, reckonRoom } from "./reckon-lift.ts";
export { reckonMix } from "./reckon-mix.ts";
export { reckonNudges } from "./reckon-nudges.ts";
export { printMeasured, reckonReduce, reckonSteps, type ReduceAsk, type Reduced } from "./reckon-reduce.ts";
export { reckonSample } from "./reckon-sample.ts";
export { reckonWeigh } from "./reckon-weigh.ts";
export { type Told, told } from "./told.ts";
export { wholeParts } from "./whole-parts.ts";
