import { abv20OfStrength } from "@partsproof/core/alcoholometry";
import { RECIPE_FILE_FORMAT, type RecipeFile, type Slot } from "../../protocol/index.ts";
import { canonicalJson, originalOf, printed } from "../filling/index.ts";
import type { Records } from "../ports.ts";
import { versionOf } from "../recipes/index.ts";
import type { RecipeRow, RecipeVersionRow } from "../rows.ts";
import { strengthOf } from "../shelf/index.ts";
import { incomingFile } from "./incoming-file.ts";
import { isNamedSo } from "./named-whiskey.ts";
import { type FileSlot, slotsInFile } from "./slot-in-file.ts";

/**
 * X1: a household's recipe as a file, in its latest version, without its note. One that came in as a file goes out as that file again, with
 * every field that is not known here, as far as it is still the same; where it is another, the file it came in as stands first in its lineage.
 */
export async function recipeFileOf(
  records: Records,
  recipe: RecipeRow,
): Promise<{ readonly file: RecipeFile; readonly version: RecipeVersionRow }> {
  const version = await versionOf(records, recipe, recipe.latestNumber);
  if (version === undefined)
    throw new Error(`recipe ${recipe.id} requires its version ${recipe.latestNumber}`);
  const inFile = slotsInFile(records, recipe.householdId);
  const base = await incomingFile(records, recipe.householdId, recipe.id);
  const slots: FileSlot[] = [];
  for (const slot of version.body.slots) {
    if (slot.parts === 0) continue;
    const own = { parts: slot.parts, ...(await inFile(slot)) };
    const before = slot.from === undefined ? undefined : base?.file.slots[slot.from - 1];
    slots.push(before === undefined ? own : overlaid(before, own, slot));
  }
  return {
    file: base === null ? ownFile(recipe, version, slots) : again(base, recipe, version, slots),
    version,
  };
}

type Body = RecipeVersionRow["body"];

function ownFile({ name }: RecipeRow, { body }: RecipeVersionRow, slots: FileSlot[]): RecipeFile {
  const file: RecipeFile = { format: RECIPE_FILE_FORMAT, version: 1, name, slots };
  return {
    ...file,
    original: originalIn(file),
    ...making(body),
    ...(body.lineage === undefined || body.lineage.length === 0 ? {} : { lineage: body.lineage }),
  };
}

function originalIn(file: RecipeFile): NonNullable<RecipeFile["original"]> {
  const { profile, abv20: abv, youngestYears } = originalOf(file);
  return {
    ...(Object.keys(profile).length > 0 ? { profile: { ...profile } } : {}),
    ...(abv === null ? {} : { abv }),
    ...(youngestYears === null ? {} : { ageYears: youngestYears }),
  };
}

const making = ({ waterTo, restDays, oak }: Body): Pick<RecipeFile, "waterTo" | "restDays" | "oak"> => ({
  ...(waterTo === null ? {} : { waterTo: abv20OfStrength(strengthOf(waterTo)) }),
  ...(restDays === null ? {} : { restDays }),
  ...(oak === "" ? {} : { oak }),
});

/** The slot as it came in, with what is different here. A whiskey named so stays as its maker said it. */
function overlaid(before: FileSlot, own: FileSlot, { of }: Slot): FileSlot {
  const { whiskey, blend, rule, reason, ...kept } = before;
  const same =
    of.kind === "open" ||
    (own.whiskey !== undefined &&
      whiskey !== undefined &&
      isNamedSo(whiskey, {
        maker: own.whiskey.maker ?? "",
        name: own.whiskey.name,
        release: own.whiskey.release ?? "",
      }));
  const samely = rule !== undefined && own.rule !== undefined && printed(rule) === own.rule;
  const shown = same ? { whiskey, blend } : { whiskey: own.whiskey, blend: own.blend };
  return {
    ...kept,
    parts: own.parts,
    ...(shown.whiskey === undefined ? {} : { whiskey: shown.whiskey }),
    ...(shown.blend === undefined ? {} : { blend: shown.blend }),
    ...(own.rule === undefined ? {} : { rule: samely ? rule : own.rule }),
    ...(own.reason === undefined ? {} : { reason: own.reason === reason ? reason : own.reason }),
  };
}

function again(
  { file, sha256 }: { readonly file: RecipeFile; readonly sha256: string },
  { name }: RecipeRow,
  { body }: RecipeVersionRow,
  slots: FileSlot[],
): RecipeFile {
  const { original, waterTo: _, restDays: __, oak, note, lineage, findings, ...kept } = file;
  const made = {
    ...kept,
    name,
    slots,
    ...(note !== undefined && note === body.note ? { note } : {}),
    ...(oak === "" && body.oak === "" ? { oak } : {}),
    ...making(body),
  };
  const whole = {
    ...made,
    ...(original === undefined ? {} : { original }),
    ...(lineage === undefined ? {} : { lineage }),
    ...(findings === undefined ? {} : { findings }),
  };
  if (canonicalJson(whole) === canonicalJson(file)) return file;
  // What was found was found of the other; what it comes to is reckoned anew where parts or whiskeys differ.
  const mixed = ({ slots: lines }: Pick<RecipeFile, "slots">): string =>
    canonicalJson(lines.map(({ parts, whiskey }) => [parts, whiskey ?? null]));
  const target = mixed(file) === mixed(made) ? original : originalIn(made);
  return {
    ...made,
    ...(target === undefined ? {} : { original: target }),
    lineage: [{ name: file.name, sha256 }, ...(lineage ?? [])].slice(0, 50),
  };
}
