import { mixParts } from "@partsproof/core/alcoholometry";
import { abv20, millilitres20 } from "@partsproof/core/quantity";
import type { Original } from "@partsproof/core/slots";
import type { RecipeFile } from "../../protocol/index.ts";

/**
 * What a recipe comes to as its maker had it: what the file says; where it says nothing, what its whiskeys come to, as far as it is known of
 * every one of them. What is not known of one is not known of the whole.
 */
export function originalOf({ original, slots }: RecipeFile): Original {
  return {
    profile: original?.profile ?? meanProfile(slots),
    abv20: original?.abv ?? exactStrength(slots),
    youngestYears: original?.ageYears ?? youngest(slots),
  };
}

type Slots = RecipeFile["slots"];

const all = (slots: Slots): number => slots.reduce((sum, { parts }) => sum + parts, 0);

function meanProfile(slots: Slots): Record<string, number> {
  const names = Object.keys(slots[0]?.whiskey?.profile ?? {});
  const whole = names.filter((name) =>
    slots.every(({ whiskey }) => Object.hasOwn(whiskey?.profile ?? {}, name)),
  );
  const mean = (name: string): number =>
    slots.reduce((sum, { parts, whiskey }) => sum + parts * whiskey!.profile![name]!, 0) / all(slots);
  return Object.fromEntries(whole.map((name) => [name, mean(name)]));
}

function exactStrength(slots: Slots): number | null {
  const parts = slots.flatMap(({ parts: own, whiskey }) =>
    whiskey?.abv === undefined ? [] : [{ parts: own, abv20: abv20(whiskey.abv) }],
  );
  return parts.length === slots.length ? mixParts(parts, millilitres20(1000)).abv20 : null;
}

function youngest(slots: Slots): number | null {
  const ages = slots.flatMap(({ whiskey }) => whiskey?.ageYears ?? []);
  return ages.length === slots.length ? Math.min(...ages) : null;
}
