import { run } from "./run.ts";

/** Takes what a check has to say, before it is known whether it passes. */
export type Say = (text: string) => void;

export interface Check {
  readonly name: string;
  readonly passes: (say: Say) => Promise<boolean>;
}

const program = (name: string, command: string, args: readonly string[]): Check => ({
  name,
  passes: async (say) => (await run(command, args, { onText: say })).ok,
});

/** What can be said about the code without running it. */
export const staticChecks: readonly Check[] = [
  program("types", "tsc", ["-b"]),
  program("lint", "oxlint", ["--type-aware", "--deny-warnings"]),
  program("format", "biome", ["format"]),
  program("dead code", "knip", []),
];
