import type { Kysely } from "kysely";
import type { Database } from "../query.ts";

/** Where a whiskey comes from. Null of those that were there before: nobody has said. */
export async function place(db: Kysely<Database>): Promise<void> {
  await db.schema.alterTable("whiskey").addColumn("place", "text").execute();
}
