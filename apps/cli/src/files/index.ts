export { readJsonFile } from "./read-json-file.ts";
export { readTextFile } from "./read-text-file.ts";
export { writeWhole } from "./write-whole.ts";
