export { sheetWordHandlers } from "./sheet-words.ts";
export { wordHandlers } from "./words.ts";
export { wordsOf } from "./words-of.ts";
