import type { Tools, Typed as ReadText } from "../../bench/index.ts";
import type { FieldName, Row, Typed } from "./typed.ts";

/** What every job of the bench gets. */
export interface JobProps {
  readonly typed: Typed;
  readonly set: (fields: Partial<Record<FieldName, string>>) => void;
  readonly setRows: (rows: readonly Row[]) => void;
  readonly tools: Tools;
}

/** The values, when every text could be read; null while one cannot. */
export function all<K extends string>(
  read: Readonly<Record<K, ReadText>>,
): Readonly<Record<K, number>> | null {
  const values: Partial<Record<K, number>> = {};
  for (const [name, one] of Object.entries(read) as [K, ReadText][]) {
    if (!one.ok) return null;
    values[name] = one.value;
  }
  return values as Record<K, number>;
}
