import { readFileSync } from "node:fs";

export interface Fixture<T> {
  /** Where the figures come from: the `# ` lines at the head of a CSV, or `source` of a JSON file. */
  readonly source: string;
  readonly rows: readonly T[];
}

/**
 * Reads a CSV of published figures: `# source` lines, one line of names, then rows. Cells in double quotes may hold
 * commas and doubled quotes (RFC 4180), not line breaks.
 *
 * @param file such as new URL("./fixtures/table-1.csv", import.meta.url)
 * @throws {Error} naming the line, for a file without a source and for a row with too many or too few cells
 */
export function readCsvFixture(file: URL): Fixture<Readonly<Record<string, string>>> {
  const lines = readFileSync(file, "utf8").split(/\r?\n/);
  const start = lines.findIndex((line) => !line.startsWith("#"));
  const source = requireSource(
    file,
    lines
      .slice(0, start)
      .map((line) => line.slice(1).trim())
      .join("\n"),
  );
  const names = cellsOf(lines[start] ?? "");
  const rows = lines.slice(start + 1).flatMap((line, index) => {
    if (line === "") return [];
    const cells = cellsOf(line);
    if (cells.length !== names.length) {
      throw new Error(
        `line ${start + index + 2} of ${file.pathname} requires ${names.length} cells, got ${cells.length}`,
      );
    }
    return [Object.fromEntries(names.map((name, i) => [name, cells[i] ?? ""]))];
  });
  return { source, rows };
}

/** Reads JSON of published figures: `{ "source": "…", "rows": […] }`. The caller vouches for the type of a row. */
export function readJsonFixture<T>(file: URL): Fixture<T> {
  const { source, rows } = JSON.parse(readFileSync(file, "utf8")) as Partial<Fixture<T>>;
  if (!Array.isArray(rows)) throw new Error(`${file.pathname} requires a list of rows, got ${typeof rows}`);
  return { source: requireSource(file, source ?? ""), rows };
}

function requireSource(file: URL, source: string): string {
  if (source.trim() === "") throw new Error(`${file.pathname} requires its source at its head, got none`);
  return source;
}

function cellsOf(line: string): readonly string[] {
  const cells = [...`,${line}`.matchAll(/,(?:"((?:[^"]|"")*)"|([^,"]*))/g)];
  if (cells.reduce((length, [cell]) => length + cell.length, 0) !== line.length + 1) {
    throw new Error(`fixture requires quotes around a whole cell, got ${line}`);
  }
  return cells.map(([, quoted, plain]) => quoted?.replaceAll('""', '"') ?? plain ?? "");
}
