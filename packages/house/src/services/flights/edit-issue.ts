import type { Issue } from "../../protocol/index.ts";
import type { SheetRow } from "../rows.ts";

export type Path = Issue["path"];

export const issue = (code: string, path: Path, limit: string, received: unknown, what: string): Issue => ({
  code,
  path,
  limit,
  received,
  message: `${what} requires ${limit}, got ${String(received)}`,
});

export const unknownCode = (path: Path, code: string, { order }: Pick<SheetRow, "order">): Issue =>
  issue("unknown_code", path, `a code of this sheet: ${order.join(", ")}`, code, "a glass");
