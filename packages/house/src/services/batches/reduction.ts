import { describeLiquid, reduceInSteps } from "@partsproof/core/alcoholometry";
import { type Contents as Held, massesOf } from "@partsproof/core/ledger";
import { DAY_MS, type Abv20, abv20, grams } from "@partsproof/core/quantity";
import { abv20OfStrength } from "@partsproof/core/alcoholometry";
import type { Batch, BodyRead } from "../../protocol/index.ts";
import { refuse } from "../refuse.ts";
import type { BatchRow } from "../rows.ts";
import { batchNow, type Shelf, strengthOf } from "../shelf/index.ts";

type Asked = NonNullable<BodyRead<"editBatch">["reduction"]>;

/** A strength this near to that of a step has been reached: a drop of water in a bottle. */
const REACHED = 0.02;
/** R7: water in steps begins at what the batch's vessel holds now. */
export function begunReduction(
  shelf: Shelf,
  batch: BatchRow,
  asked: Asked | null,
  since: string,
): BatchRow["reduction"] {
  if (asked === null) return null;
  const from = liquidOf(batchNow(shelf, batch)).abv20;
  const to = abv20OfStrength(strengthOf(asked.waterTo));
  if (from === null || !(to > 0) || to >= from)
    refuse(422, {
      code: "water_cannot_raise",
      path: ["reduction", "waterTo", "value"],
      limit:
        from === null
          ? "a batch of which something is left"
          : `more than 0 and less than its ${from.toFixed(2)} % vol`,
      received: asked.waterTo.value,
      message: `water in steps requires ${from === null ? "a batch of which something is left" : `more than 0 and less than the batch's ${from.toFixed(2)} % vol`}, got ${to.toFixed(2)} % vol`,
    });
  return { ...asked, since, fromAbv20: from };
}

/**
 * Steps of equal fall in strength. How many are done follows from the strength there is, so that water poured on another way, or a pour
 * undone, counts; what is left is reckoned from what the vessel holds now.
 */
export function shownReduction({ reduction }: BatchRow, held: Held): Batch["reduction"] {
  if (reduction === null) return null;
  const { waterTo, steps, everyDays, since, fromAbv20 } = reduction;
  const to = abv20OfStrength(strengthOf(waterTo));
  const now = liquidOf(held);
  const level = (step: number): number => fromAbv20 + ((to - fromAbv20) * step) / steps;
  const strength = now.abv20;
  const done =
    strength === null
      ? steps
      : Array.from({ length: steps }, (_, i) => i + 1).filter((step) => strength <= level(step) + REACHED)
          .length;
  const left =
    strength === null || done >= steps
      ? null
      : reduceInSteps({ start: now, to: abv20(to), add: 0 as Abv20, steps: steps - done, by: "strength" });
  return {
    ...reduction,
    done,
    left:
      left?.ok === true
        ? left.steps.map(({ addMl, addG, after }, i) => ({
            dueAt: new Date(Date.parse(since) + (done + i) * everyDays * DAY_MS).toISOString(),
            addMl,
            addG,
            afterAbv20: after.abv20 ?? 0,
          }))
        : [],
  };
}

function liquidOf(held: Held) {
  const { ethanolG, waterG } = massesOf(held);
  const { abv20: strength } = describeLiquid({ ethanolG: grams(ethanolG), waterG: grams(waterG) });
  return { ethanolG: grams(ethanolG), waterG: grams(waterG), abv20: strength };
}
