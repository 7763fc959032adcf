import { abv20OfStrength } from "@partsproof/core/alcoholometry";
import type { RecipeFile, Slot } from "../../protocol/index.ts";
import type { Records } from "../ports.ts";
import { slotLiquids } from "../recipes/index.ts";
import { type Shelf, shelfState, shownContents, strengthOf } from "../shelf/index.ts";
import { printed } from "../filling/index.ts";
import { namedWhiskey } from "./named-whiskey.ts";

export type FileSlot = RecipeFile["slots"][number];

/** Writes slots of a household's recipes as a file has them; the shelf is read only where a batch stands in one. */
export function slotsInFile(
  records: Records,
  household: string,
): (slot: Slot) => Promise<Omit<FileSlot, "parts">> {
  let shelf: Shelf | null = null;
  const said = ({ rule, reason }: Pick<Slot, "rule" | "reason">) => ({
    ...(rule === undefined ? {} : { rule: printed(rule) }),
    ...(reason === undefined ? {} : { reason }),
  });
  return async (slot) => {
    const { of } = slot;
    if (of.kind === "open") return { ...(of.named === null ? {} : { whiskey: of.named }), ...said(slot) };
    if (of.kind === "whiskey") {
      const row = await records.find("whiskey", household, of.whiskeyId);
      if (row === null) throw new Error(`a slot requires its whiskey, ${of.whiskeyId} is not there`);
      return { whiskey: namedWhiskey(row), ...said(slot) };
    }
    shelf ??= await shelfState(records, household);
    return { ...(await batchInFile(records, household, shelf, of)), ...said(slot) };
  };
}

/** X1: a batch is named with its strength and its youngest age, and tells what it was made of. */
async function batchInFile(
  records: Records,
  household: string,
  shelf: Shelf,
  of: Extract<Slot["of"], { kind: "batch" }>,
): Promise<Pick<FileSlot, "whiskey" | "blend">> {
  const liquid = slotLiquids(shelf)(of);
  const { abv20, youngestAge } = shownContents(shelf, liquid.of(1000));
  const whiskey = {
    name: liquid.label,
    ...(abv20 === null ? {} : { abv: abv20 }),
    ...(youngestAge.years === null ? {} : { ageYears: youngestAge.years }),
  };
  const { recipeId, recipeNumber } = shelf.batches.get(of.batchId)!;
  const recipe = await records.find("recipe", household, recipeId);
  const [version] = await records.list("recipeVersion", household, {
    where: { recipeId, number: recipeNumber },
    limit: 1,
  });
  if (!recipe || !version) return { whiskey };
  const slots = version.body.slots
    .filter(({ parts }) => parts > 0)
    .map(({ parts, of: own, rule, reason }) => ({
      parts,
      ...lineOf(shelf, own),
      ...(rule === undefined ? {} : { rule: printed(rule) }),
      ...(reason === undefined ? {} : { reason }),
    }));
  const { waterTo } = version.body;
  return {
    whiskey,
    blend: {
      name: recipe.name,
      slots,
      ...(waterTo === null ? {} : { waterTo: abv20OfStrength(strengthOf(waterTo)) }),
    },
  };
}

function lineOf(shelf: Shelf, of: Slot["of"]): Pick<FileSlot, "whiskey"> {
  if (of.kind === "open") return of.named === null ? {} : { whiskey: of.named };
  if (of.kind === "batch") return { whiskey: { name: shelf.batches.get(of.batchId)?.name ?? "a batch" } };
  const row = shelf.whiskeys.get(of.whiskeyId);
  return row === undefined ? {} : { whiskey: namedWhiskey(row) };
}
