import {
  type Issue,
  type ListedRow,
  SHELF_FILE_LIMITS,
  type ShelfListDraft,
  type ShelfListPreview,
} from "../../protocol/index.ts";
import { canonicalHash } from "../filling/index.ts";
import { guessColumns } from "./guess-columns.ts";
import { dateOrder } from "./read-date.ts";
import { readTable } from "./read-table.ts";
import { rowOf } from "./row-of.ts";

/** A whiskey of the household, by what tells it apart. */
export interface Known {
  readonly id: string;
  readonly maker: string;
  readonly name: string;
  readonly release: string;
}

/** I1: the list as it would be taken in. Nothing is written. */
export async function previewList(
  draft: ShelfListDraft,
  known: readonly Known[],
  currency: string,
): Promise<ShelfListPreview> {
  const table = readTable(draft.text);
  const [head, ...body] = table.rows;
  const issues: Issue[] = [];
  const columns = guessColumns(
    (head?.cells ?? []).map((cell) => cell.trim()),
    draft.columns,
  );
  const whole = (code: string, limit: string, received: string | number | null): void =>
    void issues.push({
      code,
      path: ["text"],
      limit,
      received,
      message: `a list of a shelf requires ${limit}, got ${received ?? "nothing"}`,
    });
  if (table.unclosed !== null)
    whole("quote_open", "every quote closed", `an open one from line ${table.unclosed}`);
  if (body.length === 0) whole("rows_none", "a line of headings and a row under it", table.rows.length);
  if (body.length > SHELF_FILE_LIMITS.rows)
    whole("rows_many", `at most ${SHELF_FILE_LIMITS.rows} rows`, body.length);
  if (columns.length > SHELF_FILE_LIMITS.columns)
    whole("columns_many", `at most ${SHELF_FILE_LIMITS.columns} columns`, columns.length);
  if (!columns.some(({ as }) => as === "name" || as === "maker"))
    whole("column_missing", "a column of names", columns.map(({ heading }) => heading).join(", "));
  if (!columns.some(({ as }) => as === "strength"))
    whole("column_missing", "a column of strengths", columns.map(({ heading }) => heading).join(", "));
  const days = columns.findIndex(({ as }) => as === "opened");
  const how = {
    columns,
    strengthUnit: draft.strengths === undefined ? null : draft.strengths === "abv20" ? "%" : "proof",
    volumeUnit: draft.volumes ?? null,
    dates: draft.dates ?? dateOrder(body.map(({ cells }) => cells[days] ?? "")),
    currency,
  };
  const refused = issues.length > 0;
  const rows = refused
    ? []
    : matched(
        body.map((row) => rowOf(row, how)),
        known,
      );
  const good = rows.filter(({ whiskey }) => whiskey !== null);
  const shown = {
    separator: table.separator,
    columns: columns.map(({ heading, as, guessed }) => ({ heading, as, guessed })),
    rows,
    blank: table.blank,
    good: good.length,
    wrong: rows.length - good.length,
    newWhiskeys: good.filter(({ same }) => same === null).length,
    bottles: good.reduce((sum, { bottles }) => sum + bottles, 0),
    issues,
  };
  return { ...shown, sha256: (await canonicalHash(shown, "list")).sha256 };
}

/** Each row with the whiskey of the household, or the earlier row, that is the same one. */
function matched(rows: readonly ListedRow[], known: readonly Known[]): ListedRow[] {
  const key = ({ maker, name, release }: Omit<Known, "id">): string =>
    [maker, name, release].map((text) => text.trim().toLowerCase()).join("\n");
  const here = new Map(known.map((one) => [key(one), one.id]));
  const lines = new Map<string, number>();
  return rows.map((row) => {
    if (row.whiskey === null) return row;
    const own = key(row.whiskey);
    const whiskeyId = here.get(own);
    const line = lines.get(own);
    if (whiskeyId !== undefined) return { ...row, same: { whiskeyId, line: null } };
    if (line !== undefined) return { ...row, same: { whiskeyId: null, line } };
    lines.set(own, row.line);
    return row;
  });
}
