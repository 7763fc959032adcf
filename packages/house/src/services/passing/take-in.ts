import type { RecipeFile, RecipeTakeInPreview, Slot } from "../../protocol/index.ts";
import { born } from "../birth.ts";
import { checkRecipe, printed } from "../filling/index.ts";
import type { Handlers } from "../handler.ts";
import { knownHousehold } from "../known.ts";
import type { Records } from "../ports.ts";
import { shownRecipe } from "../recipes/index.ts";
import { refuse } from "../refuse.ts";
import type { RecipeRow, RecipeVersionRow, WhiskeyRow } from "../rows.ts";
import { whiskeyLabel } from "../shelf/index.ts";
import { isNamedSo, namedLabel } from "./named-whiskey.ts";

/** X3: a recipe file is looked at first, and taken in when somebody says so; until then nothing is kept. */
export const takeInHandlers: Handlers<"previewTakeIn" | "takeInRecipe"> = {
  previewTakeIn: ({ house, at, body }) =>
    house.store.transaction(async (records) => {
      await knownHousehold(records, at.household);
      return looked(records, at.household, body.recipe);
    }),

  takeInRecipe: ({ house, at, body: { recipe: file, sha256, again } }) =>
    house.store.transaction(async (records) => {
      await knownHousehold(records, at.household);
      const seen = await looked(records, at.household, file);
      if (seen.sha256 !== sha256)
        refuse(409, {
          code: "other_file",
          path: ["sha256"],
          limit: `the file that was looked at, ${sha256}`,
          received: seen.sha256,
          message: `taking in a recipe requires the file that was looked at, ${sha256}, got ${seen.sha256}`,
        });
      if (seen.already !== null && !again)
        refuse(409, {
          code: "recipe_already_here",
          path: ["recipe"],
          limit: "a file that is not here yet, or again: true",
          received: seen.already.name,
          message: `taking in a recipe requires one that is not here yet, got the very file of ${seen.already.name}`,
        });
      const row: RecipeRow = {
        ...born(house, at.household),
        name: file.name,
        targetWhiskeyId: null,
        latestNumber: 1,
      };
      const version: RecipeVersionRow = {
        ...born(house, at.household),
        recipeId: row.id,
        number: 1,
        body: {
          slots: file.slots.map((slot, n) => slotOf(slot, n, seen.slots[n]!.here?.whiskeyId ?? null)),
          waterTo: file.waterTo === undefined ? null : { basis: "abv20", value: file.waterTo },
          restDays: file.restDays ?? null,
          oak: file.oak ?? "",
          note: file.note ?? "",
        },
      };
      await records.insert("recipe", row);
      await records.insert("recipeVersion", version);
      const { canonical } = await checkRecipe(file);
      await records.insert("passedFile", {
        ...born(house, at.household),
        recipeId: row.id,
        number: 1,
        way: "in",
        sha256,
        text: canonical,
      });
      return shownRecipe(row, version);
    }),
};

function slotOf(
  { parts, whiskey, rule, reason }: RecipeFile["slots"][number],
  n: number,
  here: string | null,
): Slot {
  return {
    parts,
    of: here === null ? { kind: "open", named: bareNamed(whiskey) } : { kind: "whiskey", whiskeyId: here },
    ...(rule === undefined ? {} : { rule }),
    ...(reason === undefined ? {} : { reason }),
    from: n + 1,
  };
}

/** The fields that this version knows; the file itself keeps the others. */
function bareNamed(
  whiskey: RecipeFile["slots"][number]["whiskey"],
): Extract<Slot["of"], { kind: "open" }>["named"] {
  if (whiskey === undefined) return null;
  const { maker, name, release, abv, ageYears, place, profile } = whiskey;
  return {
    name,
    ...(maker === undefined ? {} : { maker }),
    ...(release === undefined ? {} : { release }),
    ...(abv === undefined ? {} : { abv }),
    ...(ageYears === undefined ? {} : { ageYears }),
    ...(place === undefined ? {} : { place }),
    ...(profile === undefined ? {} : { profile }),
  };
}

async function looked(records: Records, household: string, file: RecipeFile): Promise<RecipeTakeInPreview> {
  const { sha256, unknownFields } = await checkRecipe(file);
  if (file.waterTo === 0)
    refuse(422, {
      code: "water_to_zero",
      path: ["recipe", "waterTo"],
      limit: "more than 0",
      received: 0,
      message: "water to a strength requires more than 0, got 0: no amount of water gets there",
    });
  const whiskeys = await records.list("whiskey", household);
  const taken = new Set<string>();
  const slots = file.slots.map(({ parts, rule, reason, whiskey, blend }, n) => {
    // Each whiskey stands in one slot; a name that two slots have is this household's in the first.
    const row = whiskeys.find(
      (one) => whiskey !== undefined && !taken.has(one.id) && isNamedSo(whiskey, one),
    );
    if (row !== undefined) taken.add(row.id);
    return {
      slot: n + 1,
      parts,
      rule: rule === undefined ? null : printed(rule),
      reason: reason ?? null,
      named: whiskey === undefined ? null : namedLabel(whiskey),
      abv: whiskey?.abv ?? null,
      here: hereOf(row),
      blend: (blend?.slots ?? []).map((line) => {
        const what = line.whiskey === undefined ? (line.rule ?? "anything") : namedLabel(line.whiskey);
        return `${line.parts} of ${what}`;
      }),
    };
  });
  const [before] = await records.list("passedFile", household, { where: { way: "in", sha256 }, limit: 1 });
  const known = before === undefined ? null : await records.find("recipe", household, before.recipeId);
  const { findings } = file;
  return {
    name: file.name,
    version: file.version,
    sha256,
    slots,
    waterTo: file.waterTo ?? null,
    restDays: file.restDays ?? null,
    oak: file.oak ?? "",
    note: file.note ?? "",
    lineage: (file.lineage ?? []).map((one) => ({ name: one.name, sha256: one.sha256 ?? null })),
    credits: [...(file.credits ?? [])],
    findings:
      findings === undefined
        ? null
        : { flights: findings.flights, sheets: findings.sheets, summary: findings.summary ?? "" },
    unknownFields: [...unknownFields],
    already: known === null ? null : { recipeId: known.id, name: known.name },
  };
}

const hereOf = (row: WhiskeyRow | undefined): RecipeTakeInPreview["slots"][number]["here"] =>
  row === undefined ? null : { whiskeyId: row.id, label: whiskeyLabel(row) };
