import { type Kysely, sql } from "kysely";
import type { Store } from "../../services/index.ts";
import type { Database } from "../query.ts";
import { createTables, type NewTable } from "./create-tables.ts";

const everyRow = {
  household_id: "id",
  id: "id",
  version: "integer",
  created_at: "text",
  updated_at: "text",
} as const;

const tables: readonly NewTable[] = [
  {
    name: "entry",
    columns: {
      ...everyRow,
      flight_id: "id",
      sheet_id: "id",
      number: "integer",
      key: "text",
      kind: "text",
      written: "json",
      hash: "text?",
    },
    references: { flight_id: "flight", sheet_id: "sheet" },
    indexes: [["flight_id"]],
    unique: [
      ["sheet_id", "number"],
      ["sheet_id", "key"],
    ],
  },
  {
    name: "joining",
    columns: {
      ...everyRow,
      flight_id: "id",
      role: "text",
      link_hash: "text",
      code_hash: "text?",
      expires_at: "text",
      closed_at: "text?",
    },
    references: { flight_id: "flight" },
    indexes: [["flight_id"], ["closed_at"]],
  },
  {
    name: "guest",
    columns: {
      ...everyRow,
      flight_id: "id",
      joining_id: "id",
      role: "text",
      sheet_id: "id?",
      name: "text",
      token_hash: "text",
      key_hash: "text",
      of_legal_age_at: "text",
      revoked_at: "text?",
    },
    references: { flight_id: "flight", joining_id: "joining", sheet_id: "sheet" },
    indexes: [["flight_id"]],
    unique: [["joining_id", "key_hash"]],
  },
  { name: "live_count", columns: { ...everyRow, seq: "integer" }, references: { id: "flight" } },
  {
    name: "live_event",
    columns: {
      ...everyRow,
      flight_id: "id",
      seq: "integer",
      kind: "text",
      sheet_id: "id?",
      number: "integer?",
    },
    references: { flight_id: "flight" },
    unique: [["flight_id", "seq"]],
  },
];

/** Columns of the tables of the house itself, after id, version, created_at and updated_at. */
const ofHouse: Readonly<Record<string, Readonly<Record<string, "text" | "text?">>>> = {
  owner: { passphrase: "text" },
  session: { token_hash: "text", used_at: "text", expires_at: "text", address: "text" },
  trail: { what: "text", address: "text?", about_household: "text?", about_flight: "text?" },
};

/** A table of phones: entries, joinings, guests, live events; and the house's own door. */
export async function table(db: Kysely<Database>, database: Store["database"]): Promise<void> {
  // Null in no row: what was there before has none of it.
  const none = database === "sqlite" ? sql`0` : sql`false`;
  const truth = database === "sqlite" ? "integer" : "boolean";
  await db.schema
    .alterTable("taster")
    .addColumn("guest", truth, (column) => column.notNull().defaultTo(none))
    .execute();
  await db.schema
    .alterTable("sheet")
    .addColumn("entries", "integer", (column) => column.notNull().defaultTo(0))
    .execute();
  for (const column of ["commitment", "closing"]) {
    await db.schema.alterTable("flight").addColumn(column, "text").execute();
  }
  await createTables(db, database, tables);
  for (const [name, columns] of Object.entries(ofHouse)) await createHouseTable(db, database, name, columns);
  await db.schema
    .createIndex("session_by_token_hash")
    .on("session")
    .columns(["token_hash"])
    .unique()
    .execute();
}

async function createHouseTable(
  db: Kysely<Database>,
  database: Store["database"],
  name: string,
  columns: Readonly<Record<string, "text" | "text?">>,
): Promise<void> {
  const id = database === "sqlite" ? ("text" as const) : sql`text collate "C"`;
  let created = db.schema
    .createTable(name)
    .addColumn("id", id, (column) => column.notNull().primaryKey())
    .addColumn("version", "integer", (column) => column.notNull())
    .addColumn("created_at", "text", (column) => column.notNull())
    .addColumn("updated_at", "text", (column) => column.notNull());
  for (const [column, type] of Object.entries(columns)) {
    created = created.addColumn(column, "text", (c) => (type === "text?" ? c : c.notNull()));
  }
  await (database === "sqlite" ? created.modifyEnd(sql`strict`) : created).execute();
}
