import { globSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { ensureChromium } from "./chromium.ts";
import { leave, onLeaving } from "./leaving.ts";
import { root } from "./place.ts";
import { programs } from "./programs.ts";
import { startPostgres } from "./postgres.ts";
import { staticChecks } from "./static-checks.ts";
import { Tally } from "./tally.ts";
import { patterns } from "../vitest.config.ts";
import { runVitest, verdict } from "./vitest-results.ts";
import { reportWebSize } from "./web-size.ts";
import { buildWeb, webIsStale } from "./web.ts";

// `npm test`: everything. `npm test -- --only core,house`: these vitest projects and what they need.

const { values } = parseArgs({ options: { only: { type: "string" } } });
const only = values.only?.split(",").filter((name) => name !== "");
const needs = (projects: readonly string[]): boolean =>
  only === undefined || projects.some((project) => only.includes(project));

const tally = new Tally();
const started = performance.now();
const temporary = mkdtempSync(join(tmpdir(), "partsproof-test-"));
onLeaving(() => rmSync(temporary, { recursive: true, force: true }));
const env: Record<string, string> = { NODE_COMPILE_CACHE: join(temporary, "compiled") };

if (!only) await tally.checkTogether(staticChecks);

if (!only || (needs(["evening"]) && webIsStale())) {
  const name = "web app: build and size of the first load";
  await tally.check({ name, passes: async () => (await buildWeb()).ok && reportWebSize() });
}

if (needs(["evening"])) {
  await tally.check({
    name: "Chromium",
    passes: async () => {
      const chromium = await ensureChromium();
      console.log(`${chromium.version} at ${chromium.path}`);
      env["CHROMIUM_PATH"] = chromium.path;
      env["PARTSPROOF_WEB_BUILT"] = "1";
      return true;
    },
  });
}

if (needs(["house", "testkit", "server", "cli", "evening"])) {
  await tally.check({
    name: "throw-away PostgreSQL",
    passes: async () => {
      const postgres = await startPostgres();
      console.log(postgres.how);
      env["TEST_DATABASE_URL"] = postgres.url;
      return true;
    },
  });
}

if (needs(["server", "cli", "evening"])) {
  await tally.check({
    name: "server and command line in few files",
    passes: async () => {
      env["PARTSPROOF_PROGRAMS"] = await programs();
      return true;
    },
  });
}

console.log("\n== tests ==");
const filesOf = (pattern: string): readonly string[] =>
  globSync(pattern, { cwd: root, exclude: (path) => /(^|\/)(node_modules|dist)(\/|$)/.test(path) }).map(
    (path) => path.replaceAll("\\", "/"),
  );
// A test file that no project runs, or a project that has no tests, would be forgotten in silence.
const expected = only ? [] : filesOf("{packages,apps,tools,benchmarks}/**/*.test.{ts,tsx}");
tally.add(
  0,
  (only ?? Object.keys(patterns))
    .filter((project) => filesOf(patterns[project] ?? "").length === 0)
    .map((project) => `project ${project}: requires at least 1 test file, got 0`),
);
const { ran, report } = await runVitest(
  (only ?? []).flatMap((project) => ["--project", project]),
  join(temporary, "vitest.json"),
  env,
);
const { passed, failures } = verdict(report, ran, expected);
tally.add(passed, failures);
console.log(`-- tests: ${passed} passed, ${failures.length} failed in ${ran.seconds.toFixed(1)} s`);

await leave();
console.log(`\nAll in ${((performance.now() - started) / 1000).toFixed(0)} s`);
tally.close();
