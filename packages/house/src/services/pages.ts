import type { ListQuery } from "./ports.ts";
import type { HouseRow, Row } from "./rows.ts";

/** One page of rows, shown. Asks for one row more than wanted to know whether there is a next page; the cursor is the last id. */
export async function pageOf<R extends HouseRow, S>(
  query: { readonly limit: number; readonly cursor?: string | undefined },
  list: (q: ListQuery<R>) => Promise<readonly R[]>,
  show: (row: R) => S,
): Promise<{ items: S[]; next: string | null }> {
  const rows = await list({
    limit: query.limit + 1,
    ...(query.cursor === undefined ? {} : { after: query.cursor }),
  });
  const items = rows.slice(0, query.limit);
  return { items: items.map(show), next: rows.length > query.limit ? (items.at(-1)?.id ?? null) : null };
}

/** A list for `pageOf` over rows already read, in order of birth, of those that fit. */
export function matching<R extends Row>(
  rows: readonly R[],
  fits: (row: R) => boolean,
): (q: ListQuery<R>) => Promise<readonly R[]> {
  return async ({ after, limit }) =>
    rows.filter((row) => (after === undefined || row.id > after) && fits(row)).slice(0, limit);
}
