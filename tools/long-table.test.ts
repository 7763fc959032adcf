import { expect, test } from "vitest";
import { readLongLine, table } from "./long-table.ts";

test("a LONG line becomes a row, any other line does not", () => {
  expect(readLongLine("  LONG kill | 300 kills | 0 writes lost ")).toEqual({
    suite: "kill",
    size: "300 kills",
    result: "0 writes lost",
  });
  for (const line of [
    "",
    "LONG",
    "LONG kill | 300",
    "LONG a | b | c | d",
    "so LONG a | b | c",
    "LONG a || c",
  ]) {
    expect(readLongLine(line)).toBeUndefined();
  }
});

test("the table lines up and gives the time of a whole suite", () => {
  const rows = [
    { suite: "kill", size: "300 kills", result: "0 lost", seconds: 600 },
    { suite: "k", size: "9", result: "ok" },
  ];
  expect(table(rows).split("\n")).toEqual([
    "| suite | size      | result | time     |",
    "| ----- | --------- | ------ | -------- |",
    "| kill  | 300 kills | 0 lost | 10.0 min |",
    "| k     | 9         | ok     |          |",
  ]);
});
