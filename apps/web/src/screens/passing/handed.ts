/** A recipe file on its way to the page that looks at it, in memory only: the text of a link never stands in an address of its own. */
let handed: string | null = null;

/** The link, or the file's text; then go to `/h/:household/take-in`. */
export function handOver(text: string): void {
  handed = text;
}

/** What was handed over, once. */
export function takeHanded(): string {
  const text = handed ?? "";
  handed = null;
  return text;
}
