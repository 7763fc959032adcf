import { execFileSync } from "node:child_process";
import { globSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { exportsAll, forbiddenFolders, lineCount, machineTraces, quantile } from "./house-style.ts";
import { root } from "./place.ts";

const read = (path: string): string => readFileSync(join(root, path), "utf8");

/** Every file of the project, tracked or about to be: what .gitignore names is not part of it. */
const files = execFileSync("git", ["ls-files", "-z", "--cached", "--others", "--exclude-standard"], {
  cwd: root,
  encoding: "utf8",
})
  .split("\0")
  .filter((path) => path !== "" && statSync(join(root, path), { throwIfNoEntry: false })?.isFile() === true);

const rooms = globSync("packages/{core,house}/src/*", { cwd: root })
  .map((path) => path.replaceAll("\\", "/"))
  .filter((path) => statSync(join(root, path)).isDirectory())
  .toSorted();

describe("rooms", () => {
  test("there are rooms", () => {
    expect(rooms.length).toBeGreaterThanOrEqual(5);
  });

  test.each(rooms)("%s has a README of at most 15 lines", (room) => {
    expect(files).toContain(`${room}/README.md`);
    expect(lineCount(read(`${room}/README.md`))).toBeLessThanOrEqual(15);
  });

  test.each(rooms)("%s has an index.ts that lists its exports one by one", (room) => {
    expect(files).toContain(`${room}/index.ts`);
    expect(exportsAll(read(`${room}/index.ts`))).toBe(false);
  });
});

test("code files of core are short: median at most 60 lines, 90th percentile at most 150", () => {
  // Left out: tests, tables of coefficients, and index files, which would only flatter the median.
  const code = files.filter(
    (path) =>
      /^packages\/core\/src\/.*\.tsx?$/.test(path) && !/(\.test|\.data)\.tsx?$|\/index\.ts$/.test(path),
  );
  const lines = code.map((path) => lineCount(read(path)));
  const median = quantile(lines, 0.5);
  const p90 = quantile(lines, 0.9);
  console.log(`core: ${code.length} code files, median ${median} lines, 90th percentile ${p90} lines`);
  expect(code.length).toBeGreaterThan(0);
  expect(median).toBeLessThanOrEqual(60);
  expect(p90).toBeLessThanOrEqual(150);
});

test("no folder is named for being useful", () => {
  expect(forbiddenFolders(files)).toEqual([]);
});

test("no file names a place on somebody's machine or a package registry", () => {
  const traces = files
    .filter((path) => !/\.(png|jpg|webp|ico|woff2?|ttf|sqlite|pdf|gz)$/.test(path))
    .flatMap((path) => machineTraces(read(path)).map((trace) => `${path}: ${trace}`));
  expect(traces).toEqual([]);
});

describe("these checks can fail", () => {
  test("export * is seen in code and not in a comment", () => {
    expect(exportsAll(`export * from "./x.ts";`)).toBe(true);
    expect(exportsAll(`export * as x from "./x.ts";`)).toBe(true);
    expect(exportsAll(`// export * from "./x.ts"\nexport { x } from "./x.ts";`)).toBe(false);
  });

  test("lines are counted without the last line end", () => {
    expect(lineCount("")).toBe(0);
    expect(lineCount("a\nb\n")).toBe(2);
    expect(lineCount("a\nb")).toBe(2);
  });

  test("quantiles are nearest ranks", () => {
    expect(quantile([10, 20, 30, 40, 50, 60, 70, 80, 90, 100], 0.9)).toBe(90);
    expect(quantile([3, 1, 2], 0.5)).toBe(2);
  });

  test("folders named for being useful are seen at any depth", () => {
    expect(forbiddenFolders(["a/utils/x.ts", "a/sharedness/x.ts", "b/Common/y/x.ts", "shared.ts"])).toEqual([
      "a/utils",
      "b/Common",
    ]);
  });

  test("machine paths and registries are seen, addresses of documents are not", () => {
    const place = (...parts: readonly string[]): string => parts.join("/");
    expect(machineTraces(`see ${place("", "work", "x")}`)).toHaveLength(1);
    expect(machineTraces(`"${place("", "home", "someone", "x")}"`)).toHaveLength(1);
    expect(machineTraces(`(${place("file:", "", "", "root", "x")})`)).toHaveLength(1);
    expect(machineTraces(`C:${["", "Users", "someone"].join("\\")}`)).toHaveLength(1);
    expect(machineTraces(place("https:", "", "registry.example.org", "x.tgz"))).toHaveLength(1);
    expect(machineTraces(place("http:", "", "10.0.0.7:4873", "x.tgz"))).toHaveLength(1);
    expect(machineTraces("https://example.org/work/1 and ../work/2 and rest/work/3")).toEqual([]);
  });
});
