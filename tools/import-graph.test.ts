import { globSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { foreignToCore, type Package, type Violation, violations } from "./import-rules.ts";
import { importsOf } from "./imports.ts";
import { root } from "./place.ts";

interface Manifest {
  readonly name: string;
  readonly exports?: Readonly<Record<string, string>>;
  readonly dependencies?: Readonly<Record<string, string>>;
}

const read = (path: string): string => readFileSync(join(root, path), "utf8");
const list = (pattern: string): readonly string[] =>
  globSync(pattern, { cwd: root, exclude: (path) => path.includes("node_modules") }).map((path) =>
    path.replaceAll("\\", "/"),
  );

const packages: readonly Package[] = list("{packages,apps}/*/package.json").map((path) => {
  const manifest = JSON.parse(read(path)) as Manifest;
  return {
    folder: path.replace("/package.json", ""),
    name: manifest.name,
    exports: manifest.exports ?? {},
    dependencies: Object.keys(manifest.dependencies ?? {}),
  };
});

const files = new Map(
  list("{packages,apps}/*/src/**/*.{ts,tsx,mts,cts,js,jsx,mjs,cjs}").map((path) => [path, read(path)]),
);

const print = ({ file, line, specifier, why }: Violation): string =>
  `${file}:${line} imports ${specifier}: ${why}`;

describe("imports point one way", () => {
  test("every package and file is read", () => {
    expect(packages.map(({ folder }) => folder).toSorted()).toEqual([
      "apps/cli",
      "apps/server",
      "apps/web",
      "packages/core",
      "packages/house",
      "packages/testkit",
    ]);
    const all = [...files.keys()];
    for (const { folder } of packages)
      expect(
        all.filter((file) => file.startsWith(folder)),
        folder,
      ).not.toEqual([]);
  });

  test("no import of packages/*/src and apps/*/src breaks the rules, type imports included", () => {
    expect(violations(files, packages).map(print)).toEqual([]);
  });

  test("core has no runtime dependency besides @stdlib", () => {
    const core = packages.find(({ folder }) => folder === "packages/core");
    expect(foreignToCore(core?.dependencies ?? ["no such package"])).toEqual([]);
    expect(foreignToCore(["@stdlib/math-base-special-erf", "zod"])).toEqual(["zod"]);
  });
});

describe("the checker can fail", () => {
  const planted: readonly (readonly [string, string, string])[] = [
    [
      "packages/core/src/quantity/x.ts",
      `import { a } from "../numeric/index.ts";`,
      "quantity may import no other room",
    ],
    [
      "packages/core/src/statistics/x.ts",
      `import type { A } from "../alcoholometry/index.ts";`,
      "statistics may import",
    ],
    [
      "packages/core/src/alcoholometry/x.ts",
      `export { a } from "../ledger/index.ts";`,
      "alcoholometry may import",
    ],
    [
      "packages/core/src/alcoholometry/x.ts",
      `export * from "../ledger/index.ts";`,
      "alcoholometry may import",
    ],
    [
      "packages/core/src/alcoholometry/x.ts",
      `export type A = import("../oak/index.ts").A;`,
      "alcoholometry may import",
    ],
    ["packages/core/src/ledger/x.ts", `const a = await import("../oak/index.ts");`, "ledger may import"],
    ["packages/core/src/ledger/x.ts", `import { a } from "@partsproof/core/sensory";`, "ledger may import"],
    [
      "packages/core/src/ledger/x.ts",
      `import { a } from "../quantity/strength.ts";`,
      "through its index.ts only",
    ],
    [
      "packages/core/src/ledger/x.test.ts",
      `import { a } from "../quantity/strength.ts";`,
      "through its index.ts only",
    ],
    ["packages/core/src/ledger/x.ts", `import { a } from "node:fs";`, "Node built-ins"],
    ["packages/core/src/ledger/x.ts", `/// <reference types="node" />`, "may import of others"],
    ["packages/core/src/ledger/x.ts", `import { a } from "zod";`, "may import of others"],
    [
      "packages/core/src/ledger/x.ts",
      `import { a } from "@partsproof/house";`,
      "may import of ours: nothing",
    ],
    [
      "packages/core/src/ledger/x.ts",
      `import { a } from "@partsproof/testkit";`,
      "may import of ours: nothing",
    ],
    ["packages/core/src/ledger/x.ts", "const a = await import(name);", "must be written out"],
    [
      "packages/core/src/ledger/x.ts",
      `import { a } from "../../../house/src/index.ts";`,
      "may not leave its package",
    ],
    ["packages/core/src/cellar/x.ts", "export const a = 1;", "no rule for this room"],
    ["packages/core/src/ledger/x.ts", "import {", "Expected"],
    [
      "packages/house/src/protocol/x.ts",
      `import type { A } from "../services/index.ts";`,
      "protocol may import no other room",
    ],
    ["packages/house/src/protocol/x.ts", `import { a } from "kysely";`, "may import of others: zod"],
    [
      "packages/house/src/services/x.ts",
      `import { a } from "../store/index.ts";`,
      "services may import protocol",
    ],
    ["packages/house/src/services/x.ts", `import { a } from "../index.ts";`, "outside the rooms"],
    ["packages/house/src/services/x.ts", `import { a } from "node:crypto";`, "Node built-ins"],
    ["packages/house/src/store/x.ts", `import { a } from "../http/index.ts";`, "store may import"],
    ["packages/house/src/http/x.ts", `import { a } from "../store/index.ts";`, "http may import"],
    [
      "packages/house/src/http/x.ts",
      `import { a } from "@partsproof/core/quantity";`,
      "may import of ours: nothing",
    ],
    ["packages/house/src/index.ts", `import { a } from "@partsproof/server";`, "may import of ours"],
    ["packages/testkit/src/x.ts", `import { a } from "@partsproof/web";`, "does not export this"],
    ["apps/server/src/x.ts", `import { a } from "@partsproof/cli";`, "does not export this"],
    ["apps/server/src/x.ts", `import { a } from "@partsproof/testkit";`, "may import of ours"],
    [
      "apps/server/src/x.ts",
      `import { a } from "@partsproof/core/src/quantity/strength.ts";`,
      "does not export this",
    ],
    ["apps/server/src/x.ts", `import { a } from "left-pad";`, "package.json does not list left-pad"],
    ["apps/cli/src/x.ts", `import { a } from "@partsproof/house/services";`, "may import of ours"],
    ["apps/cli/src/x.ts", `import { a } from "@partsproof/nowhere";`, "no such package"],
    [
      "apps/web/src/x.tsx",
      `import { a } from "@partsproof/server"; export const b = <p>{a}</p>;`,
      "may import of ours",
    ],
    ["apps/web/src/x.ts", `import { a } from "@partsproof/house/store";`, "may import of ours"],
    ["apps/web/src/x.ts", `import { a } from "node:fs";`, "Node built-ins"],
    [
      "apps/web/src/x.ts",
      `new Worker(new URL("../../server/src/main.ts", import.meta.url));`,
      "may not leave its package",
    ],
    ["apps/other/src/x.ts", "", "no rule for this package"],
  ];

  const withOther = [...packages, { folder: "apps/other", name: "other", exports: {}, dependencies: [] }];

  test.each(planted)("%s with `%s`: %s", (file, source, why) => {
    const world = file.startsWith("apps/other") ? withOther : packages;
    const found = violations(new Map([[file, source]]), world);
    expect(found.map(print)).toEqual([expect.stringContaining(why)]);
  });

  const permitted: readonly (readonly [string, string])[] = [
    [
      "packages/core/src/statistics/x.ts",
      `import { a } from "../numeric/index.ts"; import { b } from "./y.ts";`,
    ],
    ["packages/core/src/ledger/x.ts", `import type { A } from "@partsproof/core/quantity";`],
    ["packages/core/src/statistics/x.ts", `import erf from "@stdlib/math-base-special-erf";`],
    [
      "packages/core/src/quantity/x.prop.test.ts",
      `import { test } from "vitest"; import { readFileSync } from "node:fs";`,
    ],
    [
      "packages/house/src/store/x.ts",
      `import type { Port } from "../services/index.ts"; import { sql } from "kysely";`,
    ],
    ["packages/house/src/http/x.ts", `import { Hono } from "hono"; import { logger } from "hono/logger";`],
    [
      "packages/house/src/services/x.test.ts",
      `import { a } from "@partsproof/testkit"; import { b } from "../store/index.ts";`,
    ],
    [
      "packages/house/src/index.ts",
      `export { a } from "./http/index.ts"; export { b } from "./store/index.ts";`,
    ],
    [
      "apps/cli/src/x.ts",
      `import { a } from "@partsproof/server"; import { b } from "@partsproof/house/protocol";`,
    ],
    [
      "apps/web/src/x.ts",
      `import "./x.css"; import { a } from "@partsproof/house"; import { b } from "@partsproof/core/quantity";`,
    ],
  ];

  test.each(permitted)("and need not: %s with `%s`", (file, source) => {
    expect(violations(new Map([[file, source]]), packages).map(print)).toEqual([]);
  });

  test("every way of naming a module is seen", () => {
    const source = [
      `import "a";`,
      `import type { A } from "b";`,
      `import { type B } from "c";`,
      `export * from "d";`,
      `export * as e from "e";`,
      `export type { F } from "f";`,
      `type G = import("g").G;`,
      `type H = typeof import("h");`,
      "const i = import(`i`);",
      `const j = require("j");`,
      `import k = require("k");`,
      `const l = () => import("l", { with: { type: "json" } });`,
    ].join("\n");
    const seen = importsOf("x.ts", source).map(({ specifier, line }) => `${line}${specifier}`);
    expect(seen.toSorted()).toEqual(
      ["1a", "2b", "3c", "4d", "5e", "6f", "7g", "8h", "9i", "10j", "11k", "12l"].toSorted(),
    );
  });
});
