import type { Contents as Held } from "@partsproof/core/ledger";
import { mixedOf } from "../profiles/index.ts";
import { contentsByName, type Shelf } from "../shelf/index.ts";

/** Shares by whiskey of what goes by a name in the glass, or why they teach nothing. */
export type PartsOf = (name: string) => Readonly<Record<string, number>> | string;

const NOTHING_SEEN = { liquids: new Map(), scales: new Map() };

/** PA3: what was in a glass, by the name it went by. */
export function batchParts(shelf: Shelf, onWood: ReadonlySet<string>): PartsOf {
  const contentsOf = contentsByName(shelf);
  return (name) => {
    const [kind = "", id = ""] = name.split(":");
    if (kind === "whiskey")
      return shelf.whiskeys.has(id) ? { [id]: 1 } : "what was in it is not known any more";
    if (kind === "batch" && shelf.batches.has(id) && onWood.has(id))
      return "it lay on wood, which has a taste of its own";
    return sharesOf(shelf, contentsOf(kind, id)) ?? "what was in it is not known any more";
  };
}

function sharesOf(shelf: Shelf, held: Held): Readonly<Record<string, number>> | null {
  const poured = mixedOf(shelf, held, NOTHING_SEEN).parts.filter(({ amount }) => amount > 0);
  const all = poured.reduce((sum, { amount }) => sum + amount, 0);
  return all > 0 ? Object.fromEntries(poured.map(({ id, amount }) => [id, amount / all])) : null;
}
