import type { Kysely } from "kysely";
import type { Database } from "../query.ts";

/**
 * The question a flight was set for, how its glasses are laid out, and answers to sets. Flights from before took guesses and a
 * ranking of glasses in one row: `which_is_which` is what they were, and null says that nothing else was laid out.
 */
export async function question(db: Kysely<Database>): Promise<void> {
  await db.schema
    .alterTable("flight")
    .addColumn("question", "text", (column) => column.notNull().defaultTo("which_is_which"))
    .execute();
  await db.schema.alterTable("flight").addColumn("design", "text").execute();
  await db.schema
    .alterTable("sheet")
    .addColumn("answers", "text", (column) => column.notNull().defaultTo("[]"))
    .execute();
}
