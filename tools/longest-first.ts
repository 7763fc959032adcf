import { statSync } from "node:fs";
import type { TestSequencer, TestSpecification } from "vitest/node";

/** Projects in the order in which they begin: whole browsers and servers first, then what ends in moments and fills the gaps. */
export const PROJECTS = ["evening", "server", "house", "cli", "core", "testkit", "tools", "web"];
/** What takes longer than its project's others, longest first. Another order of these takes longer, and changes nothing else. */
export const LONGEST = [
  "e2e/table.test.ts",
  "e2e/evening.test.ts",
  "e2e/phone.test.ts",
  "e2e/bad-input.test.ts",
  "e2e/weigh-and-pour.test.ts",
  "src/kill.test.ts",
  "src/attack.test.ts",
  "src/load.test.ts",
  "src/attack-table.test.ts",
  "flights/sealed-worlds.test.ts",
];

/** Where it is listed; what is not comes after all that is. */
const placeIn = (list: readonly string[], listed: (entry: string) => boolean): number => {
  const found = list.findIndex(listed);
  return found < 0 ? list.length : found;
};

/**
 * Long files first: one that begins last would run alone at the end. Files of a project stay together, as those that share a worker
 * must; of the others a large one is taken to be long.
 */
export const longestFirst = (files: readonly TestSpecification[]): TestSpecification[] =>
  files
    .map((file) => ({
      file,
      keys: [
        placeIn(PROJECTS, (name) => name === file.project.name),
        placeIn(LONGEST, (end) => file.moduleId.endsWith(`/${end}`)),
        -statSync(file.moduleId).size,
      ] as const,
    }))
    .toSorted((a, b) => a.keys[0] - b.keys[0] || a.keys[1] - b.keys[1] || a.keys[2] - b.keys[2])
    .map(({ file }) => file);

/** As vitest wants it. */
export class LongestFirst implements TestSequencer {
  sort(files: TestSpecification[]): TestSpecification[] {
    return longestFirst(files);
  }

  shard(files: TestSpecification[]): TestSpecification[] {
    return files;
  }
}
