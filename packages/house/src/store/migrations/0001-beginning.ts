import type { Kysely } from "kysely";
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
  { name: "household", columns: { ...everyRow, name: "text", currency: "text", demo: "boolean" } },
  { name: "taster", columns: { ...everyRow, name: "text" } },
  {
    name: "whiskey",
    columns: {
      ...everyRow,
      maker: "text",
      name: "text",
      release: "text",
      kind: "text",
      strength: "json",
      age_years: "real?",
      grains: "json?",
      casks: "json",
      distilled_at: "text?",
      price_minor: "integer?",
      bottle_ml: "real",
      availability: "text",
      note: "text",
    },
  },
  {
    name: "recipe",
    columns: { ...everyRow, name: "text", target_whiskey_id: "id?", latest_number: "integer" },
    references: { target_whiskey_id: "whiskey" },
    indexes: [["target_whiskey_id"]],
  },
  {
    name: "recipe_version",
    columns: { ...everyRow, recipe_id: "id", number: "integer", body: "json" },
    references: { recipe_id: "recipe" },
    unique: [["recipe_id", "number"]],
  },
  {
    name: "vessel",
    columns: {
      ...everyRow,
      kind: "text",
      label: "text",
      capacity_ml: "real",
      whiskey_id: "id?",
      batch_id: "id?",
      price_minor: "integer?",
      opened_at: "text?",
    },
    references: { whiskey_id: "whiskey", batch_id: "batch" },
    indexes: [["whiskey_id"], ["batch_id"], ["kind"]],
  },
  {
    name: "batch",
    columns: {
      ...everyRow,
      name: "text",
      recipe_id: "id",
      recipe_number: "integer",
      vessel_id: "id",
      made_at: "text",
      rest_days: "integer?",
      finished_at: "text?",
      note: "text",
    },
    references: { recipe_id: "recipe", vessel_id: "vessel" },
    indexes: [["recipe_id"], ["vessel_id"]],
  },
  {
    name: "flight",
    columns: {
      ...everyRow,
      name: "text",
      pouring: "text",
      state: "text",
      glass_count: "integer",
      pour_ml: "real",
      names_on_offer: "json",
      target_name_id: "text?",
      pourer: "text?",
      marks: "json",
      holds: "json",
      alcohol_at_most_g: "real",
      host_token_hash: "text",
      pourer_token_hash: "text?",
      poured_at: "text?",
      revealed_at: "text?",
    },
    indexes: [["state"]],
  },
  {
    name: "flight_key",
    columns: { ...everyRow, flight_id: "id", sealed: "text?", opened: "json?" },
    references: { flight_id: "flight" },
    unique: [["flight_id"]],
  },
  {
    name: "sheet",
    columns: {
      ...everyRow,
      flight_id: "id",
      taster_id: "id",
      state: "text",
      token_hash: "text?",
      glass_order: "json",
      notes: "json",
      guesses: "json",
      ranking: "json?",
      undersides: "json?",
      locked_at: "text?",
    },
    references: { flight_id: "flight", taster_id: "taster" },
    indexes: [["flight_id"], ["taster_id"]],
  },
  {
    name: "transfer",
    columns: {
      ...everyRow,
      seq: "integer",
      at: "text",
      from_account: "json",
      to_account: "json",
      amount: "json",
      liquid: "json?",
      batch_id: "id?",
      flight_id: "id?",
      note: "text",
      undone_at: "text?",
    },
    references: { batch_id: "batch", flight_id: "flight" },
    indexes: [["batch_id"], ["flight_id"]],
    unique: [["seq"]],
  },
];

/** The tables of the first version. Frozen: what changes later is a step of its own. */
export async function beginning(db: Kysely<Database>, database: Store["database"]): Promise<void> {
  await createTables(db, database, tables);
  await db.schema
    .createTable("ledger_counter")
    .addColumn("household_id", "text", (column) => column.primaryKey())
    .addColumn("last_seq", "integer", (column) => column.notNull())
    .addForeignKeyConstraint("ledger_counter_household", ["household_id"], "household", ["id"], (key) =>
      key.deferrable().initiallyDeferred(),
    )
    .execute();
}
