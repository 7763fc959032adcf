import type { Store } from "@partsproof/house/services";

export type DatabaseName = Store["database"];

export const databases: readonly DatabaseName[] = ["sqlite", "postgresql"];

/** Declares the same tests for each database. The body opens a `describe` of its own that names it. */
export function eachDatabase(declare: (database: DatabaseName) => void): void {
  for (const database of databases) declare(database);
}
