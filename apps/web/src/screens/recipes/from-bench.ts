import { mixParts } from "@partsproof/core/alcoholometry";
import { abv20, millilitres20 } from "@partsproof/core/quantity";
import { type Carried, wholeParts } from "../../bench/index.ts";
import type { Cellar } from "../../cellar/index.ts";
import { printAbv } from "../../figures/index.ts";
import { BLANK, type TypedRecipe, type TypedSlot } from "./recipe-typed.ts";

/** A strength this near, % vol, is the same one: labels carry tenths. */
const SAME = 0.051;

export interface FromBench {
  readonly typed: TypedRecipe;
  /** What the bench could not know, or what had to be rounded. */
  readonly notes: readonly string[];
}

/**
 * A result of the bench as a recipe. The bench knows strengths only: a part becomes the one whiskey or batch of that strength, and
 * stays open where there is none, or several. Water among the parts becomes the strength it brings them to.
 */
export function fromBench(carried: Carried, cellar: Pick<Cellar, "stocks">): FromBench {
  const used = carried.parts.filter((one) => one.parts > 0);
  const strong = used.filter((one) => one.abv20 > 0);
  const notes: string[] = [];
  const whole = strong.every((one) => Number.isInteger(one.parts) && one.parts <= 99);
  const rounded = wholeParts(strong.map((one) => one.parts));
  if (!whole && rounded.off > 0.0005) {
    notes.push(
      `As small whole parts the shares are off by up to ${(100 * rounded.off).toFixed(1)} points of 100.`,
    );
  }
  const slots = strong.map((one, i): TypedSlot => {
    const found = [...cellar.stocks].filter(([, stock]) => Math.abs(stock.abv20 - one.abv20) < SAME);
    const [only] = found;
    const strength = printAbv(one.abv20);
    if (only === undefined) {
      notes.push(
        `Slot ${i + 1}: no whiskey or batch here has ${strength}. Choose another, or put it on the shelf first.`,
      );
    } else if (found.length > 1) {
      notes.push(`Slot ${i + 1}: ${found.length} here have ${strength}. Choose which.`);
    }
    return {
      id: i + 1,
      parts: whole ? one.parts : (rounded.parts[i] ?? 1),
      key: only !== undefined && found.length === 1 ? only[0] : "",
    };
  });
  const watered =
    carried.waterTo ??
    (strong.length === 0 || strong.length === used.length
      ? null
      : mixParts(
          used.map((one) => ({ parts: one.parts, abv20: abv20(one.abv20) })),
          millilitres20(100),
        ).abv20);
  const typed = {
    ...BLANK,
    slots: slots.length === 0 ? BLANK.slots : slots,
    water: watered === null ? "" : `${watered.toFixed(1)}%`,
  };
  return { typed, notes };
}
