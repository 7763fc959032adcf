import { availableParallelism } from "node:os";
import { defineConfig } from "vitest/config";
import { LongestFirst } from "./tools/longest-first.ts";

// Under `npm run long` the suites run at their full size and must not be cut short.
const long = process.env["PARTSPROOF_LONG"] === "1";

interface Settings {
  readonly testTimeout?: number;
  readonly hookTimeout?: number;
  readonly expect?: { readonly poll: { readonly timeout: number } };
  readonly isolate?: false;
}

/**
 * Files of one worker share its modules: nothing here keeps anything in a module or puts anything in place of one, and
 * to start a process and read every module anew for each file takes longer than most of the tests.
 */
const together = { isolate: false } as const;

const project = (name: string, include: string, settings: Settings = {}) => ({
  test: {
    name,
    include: [include],
    environment: "node" as const,
    pool: "forks" as const,
    ...settings,
    ...(long
      ? { testTimeout: 3_600_000, hookTimeout: 600_000, setupFiles: ["tools/full-size.setup.ts"] }
      : { setupFiles: ["tools/seeded.setup.ts"] }),
  },
});

const projects = [
  project("core", "packages/core/src/**/*.test.ts", { ...together, testTimeout: 60_000 }),
  project("house", "packages/house/src/**/*.test.ts", { ...together, testTimeout: 30_000 }),
  project("testkit", "packages/testkit/src/**/*.test.ts", { ...together, testTimeout: 30_000 }),
  project("server", "apps/server/src/**/*.test.ts", { ...together, testTimeout: 120_000 }),
  project("cli", "apps/cli/src/**/*.test.ts", { ...together, testTimeout: 60_000 }),
  project("tools", "tools/**/*.test.ts", { testTimeout: 60_000 }),
  project("web", "apps/web/src/**/*.test.{ts,tsx}", { ...together, testTimeout: 60_000 }),
  project("evening", "apps/web/e2e/**/*.test.ts", {
    ...together,
    testTimeout: 240_000,
    hookTimeout: 120_000,
    // A page of a busy machine answers in its own time; one second is vitest's.
    expect: { poll: { timeout: 20_000 } },
  }),
];

/** The vitest projects by name, with the pattern of their test files; `npm test` requires each to have some. */
export const patterns: Readonly<Record<string, string>> = Object.fromEntries(
  projects.map(({ test }) => [test.name, test.include.join()]),
);

export default defineConfig({
  test: {
    // Browsers, servers and databases also wait: three files at once even on two processors, where vitest would take one.
    maxWorkers: Math.max(3, availableParallelism() - 1),
    sequence: { sequencer: LongestFirst },
    // A test that is left alone by `.only` or finds nothing to run is a failure, not a success.
    allowOnly: false,
    passWithNoTests: false,
    projects,
  },
});
