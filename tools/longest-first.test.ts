import { globSync } from "node:fs";
import type { TestSpecification } from "vitest/node";
import { expect, test } from "vitest";
import { patterns } from "../vitest.config.ts";
import { LONGEST, longestFirst, PROJECTS } from "./longest-first.ts";
import { root } from "./place.ts";

test("every project has its place, and every file that is listed is there once", () => {
  expect(PROJECTS.toSorted()).toEqual(Object.keys(patterns).toSorted());
  const files = globSync("{apps,packages}/*/{src,e2e}/**/*.test.ts", { cwd: root });
  for (const end of LONGEST)
    expect(files.filter((file) => file.replaceAll("\\", "/").endsWith(`/${end}`))).toHaveLength(1);
});

test("long projects come first, in them what is listed, then the larger files; none is lost", () => {
  const file = (name: string, path: string) =>
    ({ project: { name }, moduleId: `${root}/${path}` }) as unknown as TestSpecification;
  const inOrder = [
    file("evening", "apps/web/e2e/table.test.ts"),
    file("evening", "apps/web/e2e/evening.test.ts"),
    file("house", "packages/house/src/services/flights/sealed-worlds.test.ts"),
    file("house", "packages/house/src/services/flights/flights.test.ts"),
    file("tools", "tools/house-style.test.ts"),
  ];
  expect(longestFirst(inOrder.toReversed())).toEqual(inOrder);
});
