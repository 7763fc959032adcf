import { type Kysely, sql } from "kysely";
import type { Database } from "./query.ts";

/**
 * One more than any number given or stored. The counter remembers numbers given but not used; the rows are asked
 * too, because a restored household brings its numbers with it.
 */
export async function nextSeq(db: Kysely<Database>, householdId: string): Promise<number> {
  const given = await db
    .selectFrom("ledger_counter")
    .select("last_seq")
    .where("household_id", "=", householdId)
    .executeTakeFirst();
  const used = await db
    .selectFrom("transfer")
    .select(sql<number | null>`max(seq)`.as("seq"))
    .where("household_id", "=", householdId)
    .executeTakeFirst();
  const next = Math.max(Number(given?.["last_seq"] ?? 0), used?.seq ?? 0) + 1;
  await db
    .insertInto("ledger_counter")
    .values({ household_id: householdId, last_seq: next })
    .onConflict((conflict) => conflict.column("household_id").doUpdateSet({ last_seq: next }))
    .execute();
  return next;
}
