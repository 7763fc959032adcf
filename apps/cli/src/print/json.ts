/** A result as JSON. JavaScript prints the shortest digits that read back as the same double, so nothing is lost. */
export const printJson = (result: unknown): string => JSON.stringify(result, null, 2);
