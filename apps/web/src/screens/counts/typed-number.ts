/** What is typed as a number, with a point or a comma; as text what is none, for the house to refuse at its place; undefined where left out. */
export function typedNumber(text: string): number | undefined {
  const bare = text.trim().replace(",", ".");
  if (bare === "") return undefined;
  const value = Number(bare);
  return Number.isFinite(value) ? value : (text as unknown as number);
}

/** Numbers with commas or spaces between them; undefined where there are none. */
export function typedNumbers(text: string): number[] | undefined {
  const all = text.split(/[\s,;]+/).filter((part) => part !== "");
  return all.length === 0 ? undefined : all.map((part) => typedNumber(part) ?? Number.NaN);
}

/** Without the fields that were left out. */
export const filled = <T extends object>(fields: T): T =>
  Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as T;
