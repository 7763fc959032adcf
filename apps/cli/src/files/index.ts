export { readJsonFile } from "./read-json-file.ts";
export { writeWhole } from "./write-whole.ts";
