import type { ToldOf } from "@partsproof/core/palate";
import type { TableNotes } from "./table-notes.ts";

/** PA7: notes of revealed flights that speak of a whiskey, alone and in mixes, and whether the shelf says anything. */
export function toldOf({ sheets, shelf }: Pick<TableNotes, "sheets" | "shelf">, id: string): ToldOf {
  const of = sheets.filter(({ parts, says }) => (parts[id] ?? 0) > 0 && Object.keys(says).length > 0);
  const alone = of.filter(({ parts }) => Object.keys(parts).length === 1).length;
  return {
    alone,
    inMixes: of.length - alone,
    written: shelf.some(({ parts }) => parts[id] !== undefined),
  };
}
