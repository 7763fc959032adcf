import type { Records } from "./ports.ts";
import { unknownId } from "./refuse.ts";
import type { HouseholdRow } from "./rows.ts";

/** The household, or 404. */
export async function knownHousehold(records: Records, id: string): Promise<HouseholdRow> {
  return (await records.find("household", id, id)) ?? unknownId("household", id, ["household"]);
}
