/** Words SQL keeps for itself, so that nobody has to quote a column by hand. */
const KEPT_BY_SQL: Readonly<Record<string, string>> = {
  from: "from_account",
  to: "to_account",
  order: "glass_order",
};

/** The SQL name of a table or field: `whiskeyId` is `whiskey_id`. */
export function sqlName(name: string): string {
  return KEPT_BY_SQL[name] ?? name.replace(/[A-Z]/g, (capital) => `_${capital.toLowerCase()}`);
}
