import type { Kysely } from "kysely";
import type { Database } from "../query.ts";

/**
 * How strong a glass is in what it tastes of, and who typed a paper sheet in. What rows from before say of either stands in
 * the text of their notes and stays there: none was said apart from it.
 */
export async function strengths(db: Kysely<Database>): Promise<void> {
  await db.schema
    .alterTable("sheet")
    .addColumn("strengths", "text", (column) => column.notNull().defaultTo("[]"))
    .execute();
  await db.schema.alterTable("sheet").addColumn("typed_by", "text").execute();
}
