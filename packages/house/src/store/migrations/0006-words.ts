import type { Kysely } from "kysely";
import type { Store } from "../../services/index.ts";
import type { Database } from "../query.ts";
import { createTables } from "./create-tables.ts";

/** Words that a household taught, each time it was taught. Of households from before there are none. */
export async function words(db: Kysely<Database>, database: Store["database"]): Promise<void> {
  await createTables(db, database, [
    {
      name: "taught_word",
      columns: {
        household_id: "id",
        id: "id",
        version: "integer",
        created_at: "text",
        updated_at: "text",
        number: "integer",
        phrase: "text",
        means: "text?",
        taster_id: "id?",
        flight_id: "id?",
        sheet_id: "id?",
        key: "text?",
      },
      references: { taster_id: "taster", flight_id: "flight", sheet_id: "sheet" },
      indexes: [["sheet_id"]],
      unique: [["sheet_id", "key"]],
    },
  ]);
}
