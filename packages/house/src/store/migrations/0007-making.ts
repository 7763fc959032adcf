import type { Kysely } from "kysely";
import type { Store } from "../../services/index.ts";
import type { Database } from "../query.ts";
import { createTables } from "./create-tables.ts";

/** Sets of bench trials, and what a batch is reduced to in steps. Of households from before there are none. */
export async function making(db: Kysely<Database>, database: Store["database"]): Promise<void> {
  await createTables(db, database, [
    {
      name: "trial_set",
      columns: {
        household_id: "id",
        id: "id",
        version: "integer",
        created_at: "text",
        updated_at: "text",
        name: "text",
        asked: "json",
        plan: "json",
        made: "json",
        made_at: "text?",
        note: "text",
      },
    },
  ]);
  await db.schema.alterTable("batch").addColumn("reduction", "text").execute();
}
