import { readFileSync } from "node:fs";
import { relative } from "node:path";
import { root } from "./place.ts";
import { type Ran, run } from "./run.ts";

/** The part of vitest's JSON report that is read here. */
export interface VitestReport {
  readonly testResults: readonly {
    readonly name: string;
    readonly status: string;
    readonly message?: string;
    readonly assertionResults: readonly { readonly fullName: string; readonly status: string }[];
  }[];
}

export interface Verdict {
  readonly passed: number;
  /** One name for every failure. A test that was skipped or left to do is a failure: nothing is skipped here. */
  readonly failures: readonly string[];
}

/**
 * Read a verdict out of vitest's report.
 * @param report what vitest wrote, or undefined when it wrote nothing
 * @param expected files (relative to the root), or folders with a file, that must have run: one outside every project would be forgotten
 *   in silence
 */
export const verdict = (report: VitestReport | undefined, ran: Ran, expected: readonly string[]): Verdict => {
  if (!report) return { passed: 0, failures: [`vitest wrote no report (${ran.ending})`] };
  let passed = 0;
  const failures: string[] = [];
  const files = new Set<string>();
  for (const file of report.testResults) {
    const name = relative(root, file.name).replaceAll("\\", "/");
    files.add(name);
    const before = failures.length;
    for (const test of file.assertionResults) {
      if (test.status === "passed") passed += 1;
      else failures.push(`${name}: ${test.fullName} (${test.status})`);
    }
    const silent = failures.length === before;
    if (file.assertionResults.length === 0) failures.push(`${name}: holds no test that ran`);
    else if (silent && file.status !== "passed") failures.push(`${name}: ${file.message || file.status}`);
  }
  const ranOf = (name: string): boolean =>
    name.endsWith("/") ? [...files].some((one) => one.startsWith(name)) : files.has(name);
  for (const name of expected) if (!ranOf(name)) failures.push(`${name}: was not run by any project`);
  if (passed === 0 && failures.length === 0) failures.push("vitest ran 0 tests");
  if (!ran.ok && failures.length === 0) failures.push(`vitest ended with ${ran.ending}, see above`);
  return { passed, failures };
};

/** Run vitest with the default reporter before the reader's eyes and the JSON one into a file. */
export const runVitest = async (
  args: readonly string[],
  reportFile: string,
  env: Readonly<Record<string, string>>,
  onLine?: (line: string) => void,
): Promise<{ readonly ran: Ran; readonly report: VitestReport | undefined }> => {
  const reporters = ["--reporter=default", "--reporter=json", `--outputFile.json=${reportFile}`];
  const ran = await run("vitest", ["run", ...reporters, ...args], { env, ...(onLine ? { onLine } : {}) });
  try {
    return { ran, report: JSON.parse(readFileSync(reportFile, "utf8")) as VitestReport };
  } catch {
    return { ran, report: undefined };
  }
};
