export type { Chip, Put } from "./chip.ts";
export { bring } from "./bring.ts";
export { correct } from "./mark.ts";
export { keepNoting, keptNoting, type Noting } from "./kept-noting.ts";
export { keepWords, type KeptWords, keptWords, readBy } from "./kept-words.ts";
export { forgetSheet } from "./forget-sheet.ts";
export type { GlassNotes, GlassRead } from "./read-glass.ts";
