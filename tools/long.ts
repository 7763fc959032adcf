import { existsSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { leave, onLeaving } from "./leaving.ts";
import { readLongLine, type LongRow, table } from "./long-table.ts";
import { root } from "./place.ts";
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
  { name: "laws of core", project: "core", files: [".prop.test.ts"], size: "2 000 cases a law" },
];

const { values } = parseArgs({ options: { only: { type: "string" } } });
const wanted = values.only?.split(",");
const chosen = suites.filter(({ name }) => wanted === undefined || wanted.includes(name));
const unknown = wanted?.filter((name) => !suites.some((suite) => suite.name === name)) ?? [];

const tally = new Tally();
const rows: LongRow[] = [];
const temporary = mkdtempSync(join(tmpdir(), "partsproof-long-"));
onLeaving(() => rmSync(temporary, { recursive: true, force: true }));
tally.add(
  0,
  unknown.map(
    (name) => `--only requires one of ${suites.map((suite) => suite.name).join(", ")}, got ${name}`,
  ),
);

const env: Record<string, string> = { PARTSPROOF_LONG: "1" };
if (chosen.some(({ project }) => project === "server")) {
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

await leave();
console.log(`\n${table(rows)}`);
tally.close();
