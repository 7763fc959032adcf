import { defineConfig } from "vitest/config";

const room = (name: string, include: string[], extra: object = {}) => ({
  test: { name, include, environment: "node" as const, pool: "forks" as const, ...extra },
});

export default defineConfig({
  test: {
    projects: [
      room("core", ["packages/core/src/**/*.test.ts"]),
      room("house", ["packages/house/src/**/*.test.ts"]),
      room("testkit", ["packages/testkit/src/**/*.test.ts"]),
      room("server", ["apps/server/src/**/*.test.ts"], { testTimeout: 120_000 }),
      room("cli", ["apps/cli/src/**/*.test.ts"], { testTimeout: 60_000 }),
      room("tools", ["tools/**/*.test.ts"]),
      room("web", ["apps/web/src/**/*.test.ts"]),
      room("evening", ["apps/web/e2e/**/*.test.ts"], {
        testTimeout: 240_000,
        hookTimeout: 120_000,
        fileParallelism: false,
      }),
    ],
  },
});
