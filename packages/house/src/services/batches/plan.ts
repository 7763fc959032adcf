import { massesOf, volumeOf } from "@partsproof/core/ledger";
import { rootByBrent } from "@partsproof/core/numeric";
import type { BatchPlan, Issue, StatedStrength } from "../../protocol/index.ts";
import { knownVersion } from "./batches.ts";
import type { Handlers } from "../handler.ts";
import { knownHousehold } from "../known.ts";
import {
  freeMl,
  type Shelf,
  shelfState,
  shownContents,
  together,
  type Watering,
  wateringTo,
  waterOf,
} from "../shelf/index.ts";
import { stockOf, type Take, takeFrom } from "./plan-stock.ts";
import { knownRecipe, slotLiquids } from "../recipes/index.ts";
import type { RecipeVersionRow } from "../rows.ts";

export const planHandlers: Handlers<"planBatch"> = {
  planBatch: ({ house, at, body }) =>
    house.store.transaction(async (records) => {
      await knownHousehold(records, at.household);
      const recipe = await knownRecipe(records, at.household, body.recipeId, ["recipeId"]);
      const version = await knownVersion(records, recipe, body.recipeNumber);
      return planOf(await shelfState(records, at.household), version, body.finalMl);
    }),
};

interface Poured {
  readonly slots: readonly {
    readonly slot: number;
    readonly label: string;
    readonly takes: readonly Take[];
  }[];
  readonly watering: Watering | null;
}

/** R3: pours and water of which exactly `finalMl` at 20 °C results. Moves nothing. */
export function planOf(
  shelf: Shelf,
  { recipeId, number, body }: RecipeVersionRow,
  finalMl: number,
): BatchPlan {
  const liquidOf = slotLiquids(shelf);
  const slots = body.slots
    .map(({ parts, of }, slot) => ({ slot, parts, liquid: liquidOf(of), stock: stockOf(shelf, of) }))
    .filter(({ parts }) => parts > 0);
  const at = (partMl: number): Poured => {
    const poured = slots.map(({ slot, parts, liquid, stock }) => ({
      slot,
      label: liquid.label,
      takes: takeFrom(shelf, stock, liquid, parts * partMl),
    }));
    return { slots: poured, watering: wateringOf(poured, body.waterTo) };
  };
  const parts = slots.reduce((all, slot) => all + slot.parts, 0);
  // No mixture shrinks by a third, and water only adds, so one and a half times the volume is always too much.
  const partMl = rootByBrent(
    (ml) => volumeOf(mixed(at(ml))) - finalMl,
    0,
    (1.5 * finalMl) / parts,
    (finalMl / parts) * 1e-15,
  );
  const poured = at(partMl);
  return {
    recipeId,
    recipeNumber: number,
    steps: [...poured.slots.map(slotStep), ...waterStep(poured.watering)],
    result: shownContents(shelf, mixed(poured)),
    issues: [...poured.slots.flatMap(shortIssue), ...waterIssue(poured.watering, body.waterTo)],
  };
}

/** How large a batch each slot's stock allows by itself, mL at 20 °C of the finished batch. */
export function batchLimits(
  shelf: Shelf,
  { body }: RecipeVersionRow,
): { readonly label: string; readonly freeMl: number; readonly allowsMl: number }[] {
  const liquidOf = slotLiquids(shelf);
  const slots = body.slots
    .map(({ parts, of }, slot) => ({ slot, parts, liquid: liquidOf(of), stock: stockOf(shelf, of) }))
    .filter(({ parts }) => parts > 0);
  const madeOf = (partMl: number): number => {
    const poured = slots.map(({ slot, parts, liquid, stock }) => ({
      slot,
      label: liquid.label,
      takes: takeFrom(shelf, stock, liquid, parts * partMl),
    }));
    return volumeOf(mixed({ slots: poured, watering: wateringOf(poured, body.waterTo) }));
  };
  return slots.map(({ parts, liquid, stock }) => {
    const free = stock.reduce((sum, { id }) => sum + freeMl(shelf, id), 0);
    return { label: liquid.label, freeMl: free, allowsMl: free > 0 ? madeOf(free / parts) : 0 };
  });
}

function wateringOf(slots: Poured["slots"], waterTo: StatedStrength | null): Watering | null {
  const masses = massesOf(together(slots.flatMap(({ takes }) => takes.map(({ held }) => held))));
  return waterTo === null || masses.ethanolG + masses.waterG === 0 ? null : wateringTo(masses, waterTo);
}

function mixed({ slots, watering }: Poured) {
  const held = slots.flatMap(({ takes }) => takes.map((take) => take.held));
  return together([...held, waterOf(watering?.ok ? watering.g : 0)]);
}

const total = (takes: readonly Take[], of: "ml" | "g"): number =>
  takes.reduce((sum, take) => sum + take[of], 0);
const missing = (takes: readonly Take[]): readonly Take[] => takes.filter(({ vessel }) => vessel === null);

function slotStep({ slot, label, takes }: Poured["slots"][number]): BatchPlan["steps"][number] {
  return {
    label,
    slot,
    pours: takes.flatMap(({ vessel, ml, g }) =>
      vessel === null
        ? []
        : [
            {
              from: { kind: "vessel" as const, vesselId: vessel.id },
              amount: { kind: "volume" as const, ml },
              label: vessel.label,
              ml,
              g,
            },
          ],
    ),
    ml: total(takes, "ml"),
    g: total(takes, "g"),
    shortMl: total(missing(takes), "ml"),
  };
}

function waterStep(watering: Watering | null): BatchPlan["steps"] {
  if (!watering?.ok || watering.ml === 0) return [];
  const { ml, g } = watering;
  const pour = {
    from: { kind: "water" as const },
    amount: { kind: "volume" as const, ml },
    label: "water",
    ml,
    g,
  };
  return [{ label: "water", slot: null, pours: [pour], ml, g, shortMl: 0 }];
}

function shortIssue({ label, takes }: Poured["slots"][number]): Issue[] {
  const shortMl = total(missing(takes), "ml");
  if (shortMl === 0) return [];
  const needMl = total(takes, "ml");
  const limit = `${(needMl - shortMl).toFixed(1)} mL of ${label} free on the shelf`;
  const message = `this batch requires at most ${limit}, got ${needMl.toFixed(1)} mL`;
  return [{ code: "shelf_short", path: ["finalMl"], limit, received: needMl, message }];
}

function waterIssue(watering: Watering | null, waterTo: StatedStrength | null): Issue[] {
  if (watering === null || watering.ok) return [];
  const { code, limit, message } = watering;
  return [{ code, path: ["waterTo", "value"], limit, received: waterTo?.value ?? null, message }];
}
