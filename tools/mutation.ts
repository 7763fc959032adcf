import { readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { root } from "./place.ts";
import { run } from "./run.ts";

/** The part of a mutation report (mutation-testing-elements' JSON schema) that is read here. */
export interface MutationReport {
  readonly files: Readonly<Record<string, { readonly mutants: readonly { readonly status: string }[] }>>;
}

export interface Mutation {
  readonly mutants: number;
  /** Mutants that made a test fail or run out of time, of those that could be run, per cent. */
  readonly killed: number;
}

/** Least share of mutants killed, per cent; stryker.config.json has the same. */
export const LEAST_KILLED = 90;

/** Count a report. A mutant that nothing runs is not killed; one that does not compile is left out. */
export const countMutants = (report: MutationReport): Mutation => {
  const statuses = Object.values(report.files)
    .flatMap(({ mutants }) => mutants.map(({ status }) => status))
    .filter((status) => status !== "CompileError" && status !== "RuntimeError" && status !== "Ignored");
  const killed = statuses.filter((status) => status === "Killed" || status === "Timeout").length;
  return { mutants: statuses.length, killed: statuses.length === 0 ? 0 : (100 * killed) / statuses.length };
};

/** Run Stryker over the room (stryker.config.json) and count what it wrote; undefined when it wrote nothing. */
export const runMutation = async (): Promise<Mutation | undefined> => {
  const file = join(root, "reports", "mutation.json");
  rmSync(file, { force: true });
  await run("stryker", ["run"]);
  try {
    return countMutants(JSON.parse(readFileSync(file, "utf8")) as MutationReport);
  } catch {
    return undefined;
  }
};
