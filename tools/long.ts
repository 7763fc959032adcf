import { existsSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { leave, onLeaving } from "./leaving.ts";
import { readLongLine, type LongRow, table } from "./long-table.ts";
import { LEAST_KILLED, runMutation } from "./mutation.ts";
import { root } from "./place.ts";
import { programs } from "./programs.ts";
import { startPostgres } from "./postgres.ts";
import { Tally } from "./tally.ts";
import { runVitest, verdict } from "./vitest-results.ts";

// `npm run long [-- --only kill]`: the suites at their full size, which takes too long for every change.
// A suite reads PARTSPROOF_LONG=1 and prints lines `LONG <suite> | <size> | <result>` for the table.

interface Suite {
  readonly name: string;
  readonly project: string;
  /** Files of the suite: vitest runs every test file whose path contains one of these. */
  readonly files: readonly string[];
  /** What the suite does in full, used when it prints no line of its own. */
  readonly size: string;
}

const suites: readonly Suite[] = [
  { name: "kill", project: "server", files: ["apps/server/src/kill.test.ts"], size: "kill -9, 300 times" },
  {
    name: "load",
    project: "server",
    files: ["apps/server/src/load.test.ts"],
    size: "200 tasters for a minute, 2 000 idle streams",
  },
  {
    name: "table",
    project: "evening",
    files: ["apps/web/e2e/table.test.ts"],
    size: "eight phones over HTTP and HTTPS, one without a network for 5 minutes",
  },
  {
    name: "screens",
    project: "evening",
    files: ["apps/web/e2e/"],
    size: "every screen looked at on a phone, in the dark and on a laptop",
  },
  {
    name: "uncertainty",
    project: "core",
    files: ["packages/core/src/uncertainty/agreement.test.ts"],
    size: "200 problems against Monte Carlo",
  },
  {
    name: "coverage",
    project: "core",
    files: [
      "packages/core/src/sensory/difference-test.ref.test.ts",
      "packages/core/src/statistics/correspondence.ref.test.ts",
      "packages/core/src/statistics/sequential.ref.test.ts",
      "packages/core/src/statistics/page.ref.test.ts",
      "packages/core/src/statistics/one-taster.ref.test.ts",
      "packages/core/src/statistics/pooled-worths.test.ts",
      "packages/core/src/statistics/profiles.ref.test.ts",
      "packages/core/src/statistics/rankings.ref.test.ts",
      "packages/core/src/statistics/what-differs.test.ts",
      "packages/core/src/statistics/worth-beliefs.test.ts",
      "packages/core/src/statistics/worth-calibration.test.ts",
    ],
    size: "intervals, exact tests and beliefs, simulated at the sizes people have",
  },
  {
    name: "rest",
    project: "core",
    files: ["packages/core/src/rest/households.test.ts"],
    size: "four tables of 500 simulated households",
  },
  {
    name: "next",
    project: "core",
    files: [
      "packages/core/src/learning/posterior.test.ts",
      "packages/core/src/learning/blenders.test.ts",
      "packages/core/src/learning/tasters.test.ts",
      "packages/core/src/learning/marks-told.test.ts",
    ],
    size: "the posterior against long chains, 50 cases; 300 simulated blenders; 80 tables of tasters and of marks",
  },
  {
    name: "mixing",
    project: "core",
    files: [
      "packages/core/src/mixing/learn-mixing.ref.test.ts",
      "packages/core/src/mixing/simulated.test.ts",
    ],
    size: "evidence against integration, 60 cases; tables of 400 simulated households a row",
  },
  {
    name: "palate",
    project: "core",
    files: ["packages/core/src/palate/tables.test.ts", "packages/core/src/palate/posterior.test.ts"],
    size: "400 simulated tables of tasters; levels against long chains, 50 cases",
  },
  {
    name: "notes",
    project: "core",
    files: ["packages/core/src/notes/fuzz.prop.test.ts"],
    size: "1 000 000 random and hostile notes",
  },
  {
    name: "rules",
    project: "core",
    files: ["packages/core/src/slots/rule-language.prop.test.ts"],
    size: "100 000 random and hostile rule texts",
  },
  {
    name: "household file",
    project: "house",
    files: ["packages/house/src/services/archive/hardening.test.ts"],
    size: "2 000 bottles, 20 000 transfers, 3 000 sheets; 1 000 cuts and 1 000 turned bits",
  },
  {
    name: "sealed",
    project: "house",
    files: ["packages/house/src/services/flights/sealed-worlds.test.ts"],
    size: "60 pairs of drawn evenings that no answer tells apart",
  },
  { name: "laws of core", project: "core", files: [".prop.test.ts"], size: "2 000 cases a law" },
];

/** Not a suite of vitest's own: Stryker runs the tests of alcoholometry once for every mutant of it. */
const mutation = { name: "mutation", size: "every mutant of alcoholometry" };
const names = [...suites.map(({ name }) => name), mutation.name];

const { values } = parseArgs({ options: { only: { type: "string" } } });
const wanted = values.only?.split(",");
const chosen = suites.filter(({ name }) => wanted === undefined || wanted.includes(name));
const unknown = wanted?.filter((name) => !names.includes(name)) ?? [];

const tally = new Tally();
const rows: LongRow[] = [];
const temporary = mkdtempSync(join(tmpdir(), "partsproof-long-"));
onLeaving(() => rmSync(temporary, { recursive: true, force: true }));
tally.add(
  0,
  unknown.map((name) => `--only requires one of ${names.join(", ")}, got ${name}`),
);

const env: Record<string, string> = { PARTSPROOF_LONG: "1", PARTSPROOF_PROGRAMS: await programs() };
if (chosen.some(({ project }) => project === "server" || project === "house")) {
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

for (const [index, suite] of chosen.entries()) {
  console.log(`\n== ${suite.name}: ${suite.size} ==`);
  const missing = suite.files.filter((file) => file.includes("/") && !existsSync(join(root, file)));
  if (missing.length > 0) {
    tally.add(
      0,
      missing.map((file) => `${suite.name}: requires ${file}, got no such file`),
    );
    rows.push({ suite: suite.name, size: suite.size, result: "FAILED, no such file", seconds: 0 });
    continue;
  }
  const own: LongRow[] = [];
  const { ran, report } = await runVitest(
    ["--project", suite.project, ...suite.files],
    join(temporary, `${index}.json`),
    env,
    (line) => {
      const row = readLongLine(line);
      if (row) own.push(row);
    },
  );
  const { passed, failures } = verdict(
    report,
    ran,
    suite.files.filter((file) => file.includes("/")),
  );
  tally.add(passed, failures);
  const result =
    failures.length > 0 ? `${failures.length} FAILED, ${passed} passed` : `${passed} tests passed`;
  rows.push({ suite: suite.name, size: suite.size, result, seconds: ran.seconds }, ...own);
}

if (wanted === undefined || wanted.includes(mutation.name)) {
  console.log(`\n== ${mutation.name}: ${mutation.size} ==`);
  const started = performance.now();
  const counted = await runMutation();
  const enough = counted !== undefined && counted.killed >= LEAST_KILLED;
  const result =
    counted === undefined ? "no report" : `${counted.killed.toFixed(1)} % of ${counted.mutants} killed`;
  tally.add(
    enough ? 1 : 0,
    enough ? [] : [`mutation requires at least ${LEAST_KILLED} % killed, got ${result}`],
  );
  rows.push({
    suite: mutation.name,
    size: mutation.size,
    result,
    seconds: (performance.now() - started) / 1000,
  });
}

await leave();
console.log(`\n${table(rows)}`);
tally.close();
