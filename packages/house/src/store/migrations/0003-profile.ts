import type { Kysely } from "kysely";
import type { Database } from "../query.ts";

/** What a whiskey tasted of. Null of those that were there before: nobody has said. */
export async function profile(db: Kysely<Database>): Promise<void> {
  await db.schema.alterTable("whiskey").addColumn("profile", "text").execute();
}
