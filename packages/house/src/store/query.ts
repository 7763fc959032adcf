import { type Kysely, type SelectQueryBuilder, sql } from "kysely";
import type { Store } from "../services/index.ts";
import { type AnyTable, columnsOf, type StoredRow } from "./row.ts";
import { sqlName } from "./names.ts";
import { toStored } from "./value.ts";

/** Tables by their SQL names. They are told apart by `tables.ts`, not by the type. */
export type Database = Record<string, StoredRow>;
type Select = SelectQueryBuilder<Database, string, StoredRow>;

/** A `ListQuery` of whichever table. */
interface Narrowing {
  readonly where?: Readonly<Record<string, unknown>>;
  readonly ids?: readonly string[];
  readonly after?: string;
  readonly limit?: number;
  readonly newestFirst?: boolean;
}

export function select(db: Kysely<Database>, table: AnyTable): Select {
  return db.selectFrom(sqlName(table)).selectAll();
}

/** The filter, the cursor, the order and the limit of a list. */
export function narrowed(
  start: Select,
  table: AnyTable,
  query: Narrowing,
  database: Store["database"],
): Select {
  let rows = start;
  for (const [field, value] of Object.entries(query.where ?? {})) {
    const column = columnsOf(table).find((c) => c.field === field);
    // A filter left out by mistake would list too much, so nothing is passed over.
    if (!column || value === undefined) {
      throw new TypeError(`filter of ${table} requires a field and a value, got ${field} ${String(value)}`);
    }
    const stored = toStored(column.kind, value, `${table}.${field}`, database);
    rows = stored === null ? rows.where(column.name, "is", null) : rows.where(column.name, "=", stored);
  }
  // "in ()" is no SQL of PostgreSQL; false is none there and here.
  if (query.ids?.length === 0) rows = rows.where(sql<boolean>`1 = 0`);
  else if (query.ids) rows = rows.where("id", "in", query.ids);
  if (query.after !== undefined) rows = rows.where("id", query.newestFirst ? "<" : ">", query.after);
  rows = rows.orderBy("id", query.newestFirst ? "desc" : "asc");
  return query.limit === undefined ? rows : rows.limit(sql.val(query.limit));
}
