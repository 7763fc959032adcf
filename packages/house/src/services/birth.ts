import { newId } from "./ids.ts";
import type { House } from "./ports.ts";
import { staleEdit } from "./refuse.ts";
import type { HouseRow, Row } from "./rows.ts";

/** The head of a new row. */
export function born(house: Pick<House, "clock" | "random">, householdId: string): Row {
  return { ...bornOfHouse(house), householdId };
}

/** The head of a new row of the house itself. */
export function bornOfHouse(house: Pick<House, "clock" | "random">): HouseRow {
  const now = house.clock.now().toISOString();
  return { id: newId(house), version: 1, createdAt: now, updatedAt: now };
}

/** The row with the head of its next version; 409 if the edit was made to another version (S8). */
export function edited<R extends Row>(house: Pick<House, "clock">, what: string, old: R, sent: number): R {
  if (old.version !== sent) staleEdit(what, sent, old.version);
  return { ...old, version: old.version + 1, updatedAt: house.clock.now().toISOString() };
}
