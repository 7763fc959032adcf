import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { EXAMPLES } from "./examples.data.ts";

test("the examples on the screen are the files of the folder examples", () => {
  for (const [job, file] of [
    ["rank", "rankings"],
    ["pairs", "wins"],
    ["mixture", "runs"],
  ] as const) {
    const url = new URL(`../../../../../examples/saltreach-${file}.json`, import.meta.url);
    expect(EXAMPLES[job]).toBe(readFileSync(url, "utf8"));
  }
});
