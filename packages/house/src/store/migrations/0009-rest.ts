import type { Kysely } from "kysely";
import type { Store } from "../../services/index.ts";
import type { Database } from "../query.ts";
import { createTables } from "./create-tables.ts";

const everyRow = {
  household_id: "id",
  id: "id",
  version: "integer",
  created_at: "text",
  updated_at: "text",
} as const;

/** A batch's rests, the wood in them, what was tasted meanwhile, and links to the calendar. From before there are none. */
export async function rest(db: Kysely<Database>, database: Store["database"]): Promise<void> {
  await createTables(db, database, [
    {
      name: "rest",
      columns: {
        ...everyRow,
        batch_id: "id",
        kind: "text",
        began_at: "text",
        pull: "json?",
        leads_at: "real?",
        falling: "json",
        celsius: "real?",
        abv20: "real?",
        flight_on: "text?",
        note: "text",
        sample_vessel_id: "id?",
        ended_at: "text?",
        loss_ml: "real?",
      },
      references: { batch_id: "batch", sample_vessel_id: "vessel" },
      indexes: [["batch_id"]],
    },
    {
      name: "oak_piece",
      columns: {
        ...everyRow,
        rest_id: "id",
        piece: "json?",
        count: "integer",
        area_cm2: "real",
        grams: "real?",
        species: "text",
        toast: "text",
        use: "integer",
        volume_ml: "real",
        in_at: "text",
        out_at: "text?",
      },
      references: { rest_id: "rest" },
      indexes: [["rest_id"]],
    },
    {
      name: "check_tasting",
      columns: {
        ...everyRow,
        rest_id: "id",
        taster_id: "id?",
        at: "text",
        notes: "json",
        strengths: "json",
      },
      references: { rest_id: "rest", taster_id: "taster" },
      indexes: [["rest_id"]],
    },
    {
      name: "calendar_link",
      columns: { ...everyRow, label: "text", zone: "text", link_hash: "text", revoked_at: "text?" },
      indexes: [["revoked_at"]],
    },
  ]);
}
