import type { Kysely } from "kysely";
import type { Store } from "../../services/index.ts";
import type { Database } from "../query.ts";
import { createTables } from "./create-tables.ts";

/** Recipe files that came in and went out, and results that were sent back. Of households from before there are none. */
export async function passingOn(db: Kysely<Database>, database: Store["database"]): Promise<void> {
  await createTables(db, database, [
    {
      name: "passed_file",
      columns: {
        household_id: "id",
        id: "id",
        version: "integer",
        created_at: "text",
        updated_at: "text",
        recipe_id: "id",
        number: "integer",
        way: "text",
        sha256: "text",
        text: "text?",
      },
      references: { recipe_id: "recipe" },
      indexes: [["sha256"]],
      unique: [["recipe_id", "way", "sha256"]],
    },
  ]);
}
