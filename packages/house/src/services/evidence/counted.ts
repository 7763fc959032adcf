/** How many flights, sheets (or rankings) and tasters something rests on. */
export const countedOf = (
  rows: readonly { readonly flightId: string; readonly tasterId: string }[],
): { flights: number; sheets: number; tasters: number } => ({
  flights: new Set(rows.map(({ flightId }) => flightId)).size,
  sheets: rows.length,
  tasters: new Set(rows.map(({ tasterId }) => tasterId)).size,
});

export const plural = (count: number, one: string, many = `${one}s`): string =>
  `${count} ${count === 1 ? one : many}`;
