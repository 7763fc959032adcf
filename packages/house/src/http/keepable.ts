import { unreadable } from "./problem.ts";

type Path = readonly (string | number)[];

/**
 * Refuses text that no database keeps as it is: half a surrogate pair, and U+0000. It could only come back changed. So could a field named
 * `__proto__`, which readers of records leave out without a word.
 *
 * @param sent what JSON or a query gave
 */
export function needKeepable(sent: unknown, path: Path = []): void {
  if (typeof sent === "string") {
    if (sent.isWellFormed() && !sent.includes("\0")) return;
    const received = JSON.stringify(sent.slice(0, 80));
    throw unreadable(
      422,
      "text_unkeepable",
      path,
      "well-formed Unicode without U+0000",
      received,
      path.join(".") || "request",
    );
  }
  if (typeof sent !== "object" || sent === null) return;
  for (const [key, value] of Object.entries(sent)) {
    const at = Array.isArray(sent) ? Number(key) : key;
    if (at === "__proto__")
      throw unreadable(
        422,
        "name_unkeepable",
        [...path, at],
        "any other name",
        at,
        `a name in ${path.join(".") || "the request"}`,
      );
    needKeepable(value, [...path, at]);
  }
}
