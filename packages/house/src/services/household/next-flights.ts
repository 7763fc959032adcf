import type { NextThing } from "../../protocol/index.ts";
import type { FlightRow, SheetRow } from "../rows.ts";

/** What a flight waits for; tells nothing that is in a glass. */
export function nextOfFlight(
  { id, name, state, pouring, createdAt, pouredAt }: FlightRow,
  sheets: readonly SheetRow[],
  tasterName: (id: string) => string,
): readonly NextThing[] {
  const subject = { kind: "flight" as const, id };
  if (state === "pouring") return [{ kind: "flight to pour", text: `Pour ${name}`, at: createdAt, subject }];
  if (state !== "tasting") return [];
  const unlocked = sheets.filter((sheet) => sheet.state === "free" || sheet.state === "open");
  if (unlocked.length > 0) {
    const who = unlocked.map(({ tasterId }) => tasterName(tasterId)).join(", ");
    return [{ kind: "sheet not locked", text: `${name}: not locked yet by ${who}`, at: pouredAt, subject }];
  }
  const lockedAt = sheets.reduce<string | null>(
    (last, sheet) =>
      sheet.lockedAt !== null && (last === null || sheet.lockedAt > last) ? sheet.lockedAt : last,
    null,
  );
  const at = lockedAt ?? pouredAt;
  if (pouring === "alone" && sheets.some(({ undersides }) => undersides === null)) {
    const text = `${name}: look under the glasses and enter the marks`;
    return [{ kind: "undersides to enter", text, at, subject }];
  }
  return [{ kind: "flight not revealed", text: `${name}: every sheet is locked, reveal it`, at, subject }];
}
