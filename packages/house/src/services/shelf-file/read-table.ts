import papa from "papaparse";

export interface TableRow {
  /** Line of the text on which it begins, from 1: a quoted cell can run over several. */
  readonly line: number;
  readonly cells: readonly string[];
}

export interface ReadTable {
  readonly separator: string;
  readonly rows: readonly TableRow[];
  readonly blank: number;
  /** The line of a quote that is never closed, or null. */
  readonly unclosed: number | null;
}

const SEPARATORS = [";", "\t", ",", "|"];

/** Separated values as rows of cells. Blank rows are left out and counted. */
export function readTable(given: string): ReadTable {
  const text = given.replace(/^\uFEFF/u, "");
  // What Excel writes on a first line of its own, so that another Excel finds the separator.
  const said = /^sep=(.)\r?\n/iu.exec(text);
  const body = said === null ? text : text.slice(said[0].length);
  const separator = said?.[1] ?? guessed(body);
  const { data, errors } = papa.parse(body, { delimiter: separator, skipEmptyLines: false });
  const rows: TableRow[] = [];
  let line = said === null ? 1 : 2;
  let blank = 0;
  const starts: number[] = [];
  for (const cells of data) {
    starts.push(line);
    if (cells.every((cell) => cell.trim() === "")) blank += 1;
    else rows.push({ line, cells });
    line += 1 + cells.reduce((sum, cell) => sum + (cell.match(/\r\n|\r|\n/gu)?.length ?? 0), 0);
  }
  const open = errors.find(({ code }) => code === "MissingQuotes");
  // The end of the last line is no blank row of its own.
  const last = data.at(-1);
  if (last?.length === 1 && last[0] === "") blank -= 1;
  return { separator, rows, blank, unclosed: open === undefined ? null : (starts[open.row ?? 0] ?? 1) };
}

/**
 * The separator under which the first rows have the same number of cells, the most of them: a decimal comma is in some rows and not in
 * others, a separator is in all.
 */
function guessed(text: string): string {
  const some = text.slice(0, 20_000);
  const scores = SEPARATORS.map((separator) => {
    const rows = papa
      .parse(some, { delimiter: separator, skipEmptyLines: false })
      .data.filter((cells) => cells.some((cell) => cell.trim() !== ""))
      .slice(0, 20);
    const heads = rows[0]?.length ?? 0;
    const alike = rows.filter((cells) => cells.length === heads).length / Math.max(1, rows.length);
    return { separator, score: heads < 2 ? 0 : alike * 100 + heads };
  });
  return scores.reduce((best, one) => (one.score > best.score ? one : best)).separator;
}
