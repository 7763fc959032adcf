/**
 * The one way to write a JSON value: names in order of their UTF-16 units, no white space, numbers and strings as ECMAScript
 * writes them. Source: RFC 8785 (JSON Canonicalization Scheme), section 3.2.
 *
 * @throws RangeError for a text with half a surrogate pair, which is no Unicode
 */
export function canonicalJson(value: unknown): string {
  if (typeof value === "string") {
    if (!value.isWellFormed())
      throw new RangeError("canonical JSON requires whole Unicode characters, got half of one");
    return JSON.stringify(value);
  }
  if (Array.isArray(value)) return `[${value.map(canonicalJson).join(",")}]`;
  if (typeof value !== "object" || value === null) return JSON.stringify(value);
  const rows = Object.entries(value)
    .filter(([, own]) => own !== undefined)
    .toSorted(([a], [b]) => (a < b ? -1 : 1));
  return `{${rows.map(([name, own]) => `${canonicalJson(name)}:${canonicalJson(own)}`).join(",")}}`;
}
