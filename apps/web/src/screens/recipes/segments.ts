import type { Slot } from "@partsproof/house/protocol";
import { printAbv, printAge, printParts } from "../../figures/index.ts";
import type { Cellar } from "../../cellar/index.ts";
import { slotKey } from "../../mixing/index.ts";
import type { Segment } from "../../parts/index.ts";

/** The slots of a recipe as segments of its column. */
export function segmentsOf(slots: readonly Slot[], cellar: Cellar): Segment[] {
  return slots.map((slot) => {
    const { of } = slot;
    const stock = cellar.stocks.get(slotKey(of));
    const whiskey = of.kind === "whiskey" ? cellar.whiskeys.find(({ id }) => id === of.whiskeyId) : undefined;
    const name =
      whiskey === undefined ? stock?.label : [whiskey.name, whiskey.release].filter(Boolean).join(" ");
    const sub = [
      stock === undefined ? null : printAbv(stock.abv20),
      whiskey === undefined ? null : printAge(whiskey.ageYears),
      whiskey?.maker ?? (of.kind === "batch" ? "a batch" : null),
    ].filter((text) => text !== null);
    return {
      label: name ?? openName(slot),
      amount: slot.parts,
      amountText: String(slot.parts),
      ...(sub.length === 0 ? {} : { sub: sub.join(" · ") }),
    };
  });
}

/** What stands for a line that no whiskey of this household fills. */
export function openName({ of, rule }: Slot): string {
  if (of.kind !== "open") return "not chosen yet";
  return of.named === null ? (rule ?? "anything") : `${of.named.name} (not here)`;
}

/** The column in words. */
export function columnTitle(name: string, slots: readonly Slot[], cellar: Cellar): string {
  const lines = slots
    .filter((slot) => slot.parts > 0)
    .map(
      (slot) => `${printParts(slot.parts)} ${cellar.stocks.get(slotKey(slot.of))?.label ?? openName(slot)}`,
    );
  return `${name}: ${lines.join(", ")}`;
}
