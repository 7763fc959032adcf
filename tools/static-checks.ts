import { run } from "./run.ts";

export interface Check {
  readonly name: string;
  readonly passes: () => Promise<boolean>;
}

const program = (name: string, command: string, args: readonly string[]): Check => ({
  name,
  passes: async () => (await run(command, args)).ok,
});

/** What can be said about the code without running it. */
export const staticChecks: readonly Check[] = [
  program("types", "tsc", ["-b"]),
  program("lint", "oxlint", ["--type-aware", "--deny-warnings"]),
  program("format", "biome", ["format"]),
  program("dead code", "knip", []),
];
