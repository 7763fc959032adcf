import type { Store, TableName, Tables } from "../services/index.ts";
import { sqlName } from "./names.ts";
import { type ColumnKind, everyRow, tables } from "./tables.ts";
import { fromStored, type Stored, toStored } from "./value.ts";

export type StoredRow = Record<string, Stored>;

interface Column {
  readonly field: string;
  readonly name: string;
  readonly kind: ColumnKind;
}

const columns = Object.fromEntries(
  Object.entries(tables).map(([table, fields]) => [
    table,
    Object.entries<ColumnKind>({ ...everyRow, ...fields }).map(([field, kind]) => ({
      field,
      name: sqlName(field),
      kind,
    })),
  ]),
) as unknown as Readonly<Record<TableName, readonly Column[]>>;

/** Columns of a table, in the order of its description. */
export const columnsOf = (table: TableName): readonly Column[] => columns[table];

/** A row as its table keeps it. */
export function toStoredRow<N extends TableName>(
  table: N,
  row: Tables[N],
  database: Store["database"],
): StoredRow {
  const values = row as unknown as Readonly<Record<string, unknown>>;
  return Object.fromEntries(
    columns[table].map(({ field, name, kind }) => [
      name,
      toStored(kind, values[field], `${table}.${field}`, database),
    ]),
  );
}

/** A row as services know it. */
export function fromStoredRow<N extends TableName>(table: N, stored: StoredRow): Tables[N] {
  return Object.fromEntries(
    columns[table].map(({ field, name, kind }) => [field, fromStored(kind, stored[name] ?? null)]),
  ) as unknown as Tables[N];
}
