/** What was picked in a set and whether it was right, in a few words. */
export function pickedWords({
  picked,
  right,
}: {
  readonly picked: readonly string[] | null;
  readonly right: boolean | null;
}): string {
  if (picked === null) return "no answer";
  const said = `picked ${picked.join(" and ")}`;
  return right === null ? said : `${said}, ${right ? "right" : "wrong"}`;
}
