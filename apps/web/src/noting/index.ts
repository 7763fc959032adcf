export type { Chip, Put } from "./chip.ts";
export { bring } from "./bring.ts";
export { correct, type Mark } from "./mark.ts";
export { forgetNoting, keepNoting, keptNoting, type Noting } from "./kept-noting.ts";
export type { GlassNotes, GlassRead } from "./read-glass.ts";
