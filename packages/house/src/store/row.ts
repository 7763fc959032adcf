import type { HouseTableName, HouseTables, Store, TableName, Tables } from "../services/index.ts";
import { sqlName } from "./names.ts";
import { type ColumnKind, everyHouseRow, everyRow, houseTables, tables } from "./tables.ts";
import { fromStored, type Stored, toStored } from "./value.ts";

export type StoredRow = Record<string, Stored>;
/** Of households and of the house itself. */
export type AnyTable = TableName | HouseTableName;

interface Column {
  readonly field: string;
  readonly name: string;
  readonly kind: ColumnKind;
}

const columnsIn = (fields: Readonly<Record<string, ColumnKind>>): readonly Column[] =>
  Object.entries(fields).map(([field, kind]) => ({ field, name: sqlName(field), kind }));

const columns = Object.fromEntries([
  ...Object.entries(tables).map(([table, fields]) => [table, columnsIn({ ...everyRow, ...fields })]),
  ...Object.entries(houseTables).map(([table, fields]) => [
    table,
    columnsIn({ ...everyHouseRow, ...fields }),
  ]),
]) as unknown as Readonly<Record<AnyTable, readonly Column[]>>;

/** Columns of a table, in the order of its description. */
export const columnsOf = (table: AnyTable): readonly Column[] => columns[table];

/** A row as its table keeps it. */
export function toStoredRow(table: AnyTable, row: object, database: Store["database"]): StoredRow {
  const values = row as Readonly<Record<string, unknown>>;
  return Object.fromEntries(
    columns[table].map(({ field, name, kind }) => [
      name,
      toStored(kind, values[field], `${table}.${field}`, database),
    ]),
  );
}

/** A row as services know it. */
export function fromStoredRow<N extends TableName>(table: N, stored: StoredRow): Tables[N];
export function fromStoredRow<N extends HouseTableName>(table: N, stored: StoredRow): HouseTables[N];
export function fromStoredRow(table: AnyTable, stored: StoredRow): object {
  return Object.fromEntries(
    columns[table].map(({ field, name, kind }) => [field, fromStored(kind, stored[name] ?? null)]),
  );
}
