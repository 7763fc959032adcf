import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { readCsvFixture, readJsonFixture } from "./fixture.ts";

describe("fixtures", () => {
  let folder: string;
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), "partsproof-fixture-"));
  });
  afterEach(() => rmSync(folder, { recursive: true, force: true }));
  const file = (name: string, text: string): URL => {
    writeFileSync(join(folder, name), text);
    return pathToFileURL(join(folder, name));
  };

  it("reads rows by name, quoted cells and empty ones, and the source", () => {
    const text = '# A handbook, 3rd edition,\n# table 7, page 9\na,b,c\n1,"x, ""y""",\n,,2.50\n';
    expect(readCsvFixture(file("a.csv", text))).toStrictEqual({
      source: "A handbook, 3rd edition,\ntable 7, page 9",
      rows: [
        { a: "1", b: 'x, "y"', c: "" },
        { a: "", b: "", c: "2.50" },
      ],
    });
    expect(readJsonFixture(file("a.json", '{"source": "a paper", "rows": [{"n": 1}]}'))).toStrictEqual({
      source: "a paper",
      rows: [{ n: 1 }],
    });
  });

  it("refuses figures that do not say where they come from", () => {
    expect(() => readCsvFixture(file("b.csv", "a,b\n1,2\n"))).toThrow(/requires its source/);
    expect(() => readJsonFixture(file("b.json", '{"rows": []}'))).toThrow(/requires its source/);
  });

  it("names the line of a row with too few or too many cells", () => {
    expect(() => readCsvFixture(file("c.csv", "# s\na,b\n1,2\n3\n"))).toThrow(
      /line 4 of .*c\.csv requires 2 cells, got 1/,
    );
    expect(() => readCsvFixture(file("d.csv", "# s\na,b\n1,2,3\n"))).toThrow(/requires 2 cells, got 3/);
    expect(() => readCsvFixture(file("e.csv", '# s\na,b\n1,"2"3\n'))).toThrow(/quotes around a whole cell/);
  });
});
