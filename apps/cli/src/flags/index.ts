export { BadInput, issueAt, refuse } from "./bad-input.ts";
export {
  type Flags,
  type GivenFlags,
  many,
  needed,
  one,
  type Read,
  some,
  type YesFlag,
  yes,
} from "./flag.ts";
export { edits, nearest } from "./nearest.ts";
export { type Parsed, parseFlags } from "./parse-flags.ts";
export { readDay } from "./read-day.ts";
export { readNumber, readWhole } from "./read-number.ts";
export {
  readAttributeLevel,
  readCask,
  readGlassName,
  readGlassScore,
  readGlassStrength,
  readGlassSure,
  readGlassText,
  readGrain,
  readMark,
  readPouredPart,
  readRanking,
  readSetOrder,
  readSetPick,
  readSlot,
  readTaste,
  readVesselAmount,
} from "./read-pair.ts";
export { type GlassParts, readGlassParts } from "./read-glass-parts.ts";
export { readArea, readPiece } from "./read-oak.ts";
export { onlyOne } from "./only-one.ts";
export { minorUnits } from "./read-price.ts";
export {
  readAmount,
  readLevel,
  readLevelAt,
  readMass,
  readPart,
  readStrength,
  readStrengthOn,
  readVolume,
} from "./read-quantity.ts";
export { readAddress, readAnyText, readText, readToken, readWord } from "./read-text.ts";
