import { defineConfig } from "vitest/config";

// What Stryker runs for every mutant: the tests of alcoholometry, on fixed seeds, stopping at the first that fails.
export default defineConfig({
  test: {
    include: ["packages/core/src/alcoholometry/**/*.test.ts"],
    setupFiles: ["tools/mutation.setup.ts"],
    environment: "node",
    pool: "forks",
    testTimeout: 20_000,
    bail: 1,
  },
});
