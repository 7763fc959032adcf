import { join } from "node:path";
import { expect, test } from "vitest";
import { root } from "./place.ts";
import { verdict } from "./vitest-results.ts";

const fine = { ok: true, ending: "exit 0", seconds: 1 };
const broken = { ok: false, ending: "exit 1", seconds: 1 };
const file = (name: string, status: string, ...statuses: readonly string[]) => ({
  name: join(root, name),
  status,
  message: status === "failed" ? "it could not be loaded" : "",
  assertionResults: statuses.map((each, index) => ({ fullName: `test ${index}`, status: each })),
});

test("passed tests pass", () => {
  const report = { testResults: [file("a.test.ts", "passed", "passed", "passed")] };
  expect(verdict(report, fine, ["a.test.ts"])).toEqual({ passed: 2, failures: [] });
});

test.each(["failed", "skipped", "pending", "todo", "disabled"])(
  "a test that is %s is a failure",
  (status) => {
    const report = { testResults: [file("a.test.ts", "passed", "passed", status)] };
    expect(verdict(report, fine, [])).toEqual({ passed: 1, failures: [`a.test.ts: test 1 (${status})`] });
  },
);

test("a file that could not be loaded is a failure", () => {
  expect(verdict({ testResults: [file("a.test.ts", "failed")] }, broken, []).failures).toHaveLength(1);
});

test("a file whose tests passed but which failed as a whole (a hook, say) is a failure", () => {
  const report = { testResults: [file("a.test.ts", "failed", "passed")] };
  expect(verdict(report, broken, []).failures).toEqual(["a.test.ts: it could not be loaded"]);
});

test("a test file that no project ran is a failure", () => {
  const report = { testResults: [file("a.test.ts", "passed", "passed")] };
  expect(verdict(report, fine, ["a.test.ts", "b.test.ts"]).failures).toEqual([
    "b.test.ts: was not run by any project",
  ]);
  const within = { testResults: [file("a/b/c.test.ts", "passed", "passed")] };
  expect(verdict(within, fine, ["a/b/", "b/"]).failures).toEqual(["b/: was not run by any project"]);
});

test("no report, no test, and a bad ending are failures", () => {
  expect(verdict(undefined, broken, []).failures).toEqual(["vitest wrote no report (exit 1)"]);
  expect(verdict({ testResults: [] }, fine, []).failures).toEqual(["vitest ran 0 tests"]);
  const report = { testResults: [file("a.test.ts", "passed", "passed")] };
  expect(verdict(report, broken, []).failures).toEqual(["vitest ended with exit 1, see above"]);
});
