import { type ColumnDataType, type CreateTableBuilder, type Expression, type Kysely, sql } from "kysely";
import type { Store } from "../../services/index.ts";
import type { Database } from "../query.ts";

/** A column's type as a migration writes it; `?` at the end allows null. */
type ColumnType = "id" | "text" | "integer" | "real" | "boolean" | "json";

export interface NewTable {
  readonly name: string;
  readonly columns: Readonly<Record<string, ColumnType | `${ColumnType}?`>>;
  /** Column to the table whose row it names, in the same household. */
  readonly references?: Readonly<Record<string, string>>;
  /** Columns after household_id. */
  readonly indexes?: readonly (readonly string[])[];
  readonly unique?: readonly (readonly string[])[];
}

const TYPES: Readonly<
  Record<Store["database"], Readonly<Record<ColumnType, ColumnDataType | Expression<unknown>>>>
> = {
  sqlite: {
    id: "text",
    text: "text",
    integer: "integer",
    real: "real",
    boolean: "integer",
    json: "text",
  },
  postgresql: {
    // Ids sort by bytes whatever the language of the database, as in SQLite: pages are cut by that order.
    id: sql`text collate "C"`,
    text: "text",
    integer: "integer",
    real: "double precision",
    boolean: "boolean",
    json: "text",
  },
};

interface Reference {
  readonly name: string;
  readonly columns: readonly string[];
  readonly table: string;
  readonly names: readonly string[];
}

/**
 * Creates tables of households' rows. A reference names the household as well, so that no row can point into another
 * household. References are checked when a transaction ends, so its rows can be written in any order.
 */
export async function createTables(
  db: Kysely<Database>,
  database: Store["database"],
  tables: readonly NewTable[],
): Promise<void> {
  for (const table of tables) await createTable(db, database, table);
  for (const { name, indexes = [], unique = [] } of tables) {
    for (const columns of indexes) await indexOn(db, name, columns).execute();
    for (const columns of unique) await indexOn(db, name, columns).unique().execute();
  }
  // Two tables may name each other: PostgreSQL wants both to exist first, SQLite cannot add to a table later.
  if (database === "sqlite") return;
  for (const table of tables) {
    for (const { name, columns, table: other, names } of referencesOf(table)) {
      await db.schema
        .alterTable(table.name)
        .addForeignKeyConstraint(name, [...columns], other, [...names])
        .deferrable()
        .initiallyDeferred()
        .execute();
    }
  }
}

async function createTable(
  db: Kysely<Database>,
  database: Store["database"],
  table: NewTable,
): Promise<void> {
  let created: CreateTableBuilder<string, string> = db.schema.createTable(table.name);
  for (const [column, type] of Object.entries(table.columns)) {
    const dataType = TYPES[database][type.replace("?", "") as ColumnType];
    created = created.addColumn(column, dataType, (c) => (type.endsWith("?") ? c : c.notNull()));
  }
  created = created.addPrimaryKeyConstraint(`${table.name}_primary`, ["household_id", "id"]);
  if (table.name === "household") created = created.addUniqueConstraint("household_id_once", ["id"]);
  if (database === "sqlite") {
    for (const { name, columns, table: other, names } of referencesOf(table)) {
      created = created.addForeignKeyConstraint(name, [...columns], other, [...names], (c) =>
        c.deferrable().initiallyDeferred(),
      );
    }
    // STRICT holds a column to its type, as PostgreSQL does anyway.
    created = created.modifyEnd(sql`strict`);
  }
  await created.execute();
}

const indexOn = (db: Kysely<Database>, table: string, columns: readonly string[]) =>
  db.schema
    .createIndex(`${table}_by_${columns.join("_")}`)
    .on(table)
    .columns(["household_id", ...columns]);

/** The household that a row belongs to, and the rows of it that the row names. */
const referencesOf = ({ name, references = {} }: NewTable): readonly Reference[] => [
  { name: `${name}_household`, columns: ["household_id"], table: "household", names: ["id"] },
  ...Object.entries(references).map(([column, table]) => ({
    name: `${name}_${column}`,
    columns: ["household_id", column],
    table,
    names: ["household_id", "id"],
  })),
];
