import type { Store } from "../services/index.ts";
import type { ColumnKind } from "./tables.ts";

/** What goes to and comes from the driver. */
export type Stored = string | number | boolean | null;

/**
 * A field's value as its column keeps it. Anything that a database would change in silence (NaN becomes NULL, half a
 * surrogate pair becomes a replacement character) is refused, so that what is read is what was written.
 *
 * @throws {TypeError} for a value the column cannot keep: a bug of the caller, schemas come before the store
 */
export function toStored(
  kind: ColumnKind,
  value: unknown,
  column: string,
  database: Store["database"],
): Stored {
  if (value === null) return null;
  switch (kind) {
    case "id":
    case "text":
      if (typeof value === "string" && value.isWellFormed() && !value.includes("\0")) return value;
      return wrong(column, "well-formed Unicode text without U+0000", value);
    case "integer":
      return Number.isSafeInteger(value) ? (value as number) : wrong(column, "a whole number", value);
    case "real":
      return Number.isFinite(value) ? (value as number) : wrong(column, "a finite number", value);
    case "boolean":
      if (typeof value !== "boolean") return wrong(column, "true or false", value);
      return database === "sqlite" ? Number(value) : value;
    case "json":
      return JSON.stringify(value, finite) ?? wrong(column, "a value that JSON can hold", value);
  }
}

/** The other way round. */
export function fromStored(kind: ColumnKind, stored: Stored): unknown {
  if (stored === null) return null;
  if (kind === "json") return JSON.parse(String(stored));
  if (kind === "boolean") return Boolean(stored);
  return stored;
}

/** JSON has no NaN and no infinity: JSON.stringify would write null. */
function finite(key: string, value: unknown): unknown {
  return typeof value === "number" && !Number.isFinite(value) ? wrong(key, "a finite number", value) : value;
}

function wrong(column: string, condition: string, value: unknown): never {
  throw new TypeError(
    `column ${column} requires ${condition}, got ${JSON.stringify(value) ?? String(value)}`,
  );
}
