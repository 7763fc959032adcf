import type { Records } from "../ports.ts";
import type { TableName } from "../rows.ts";

/**
 * The same records, which read a table again only after it was written. The diary asks for the whole shelf at every
 * line and changes one table of it; on a database over a wire that is most of the time it takes. Right only inside
 * one transaction, where nobody else writes.
 */
export function readOnce(records: Records): Records {
  const known = new Map<TableName, Map<string, Promise<unknown>>>();
  const once = <T>(table: TableName, what: string, read: () => Promise<T>): Promise<T> => {
    const ofTable = known.get(table) ?? new Map<string, Promise<unknown>>();
    const answer = ofTable.get(what) ?? read();
    known.set(table, ofTable.set(what, answer));
    return answer as Promise<T>;
  };
  const writing = <T>(table: TableName, write: () => Promise<T>): Promise<T> =>
    write().finally(() => known.delete(table));
  return {
    ...records,
    find: (table, household, id) =>
      once(table, `${household} ${id}`, () => records.find(table, household, id)),
    list: (table, household, query = {}) =>
      once(table, `${household} ${JSON.stringify(query)}`, () => records.list(table, household, query)),
    insert: (table, row) => writing(table, () => records.insert(table, row)),
    replace: (table, row) => writing(table, () => records.replace(table, row)),
    remove: (table, household, id) => writing(table, () => records.remove(table, household, id)),
    removeHousehold: (household) => records.removeHousehold(household).finally(() => known.clear()),
  };
}
