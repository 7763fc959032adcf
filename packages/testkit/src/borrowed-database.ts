import type { DatabaseName } from "./databases.ts";
import { emptyPostgres } from "./postgres.ts";
import { type TemporaryDatabase, temporaryDatabase } from "./temporary-database.ts";

const shelf: TemporaryDatabase[] = [];

/**
 * A database without rows that nobody else has while it is borrowed. Making one takes PostgreSQL half a second, so
 * this process empties those it got back and lends them again. A test that changes tables makes its own instead.
 */
export async function borrowDatabase(database: DatabaseName): Promise<TemporaryDatabase> {
  if (database === "sqlite") return temporaryDatabase(database);
  const lent = shelf.pop() ?? (await temporaryDatabase(database));
  return {
    place: lent.place,
    remove: async () => {
      try {
        await emptyPostgres(lent.place);
        shelf.push(lent);
      } catch (error) {
        await lent.remove();
        throw error;
      }
    },
  };
}
