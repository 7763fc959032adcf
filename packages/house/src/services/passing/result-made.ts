import { abv20OfStrength } from "@partsproof/core/alcoholometry";
import {
  type BodyRead,
  RECIPE_LINK_LIMITS,
  RESULT_FILE_FORMAT,
  type ResultFile,
  writeRecipeLink,
} from "../../protocol/index.ts";
import { canonicalHash } from "../filling/index.ts";
import type { Handlers } from "../handler.ts";
import type { Reads, Records } from "../ports.ts";
import { knownRecipe, versionOf } from "../recipes/index.ts";
import { refuse } from "../refuse.ts";
import type { RecipeRow, RecipeVersionRow } from "../rows.ts";
import { strengthOf } from "../shelf/index.ts";
import { incomingFile } from "./incoming-file.ts";
import { namedWhiskey } from "./named-whiskey.ts";
import { ownPlaces } from "./own-places.ts";

/** X6: what came of a recipe that came in as a file, or was filled from one, as a document to send back. */
export const resultMadeHandlers: Handlers<"makeResult"> = {
  makeResult: ({ house, at, body }) =>
    house.store.transaction(async (records) => {
      const recipe = await knownRecipe(records, at.household, at["recipe"] ?? "", ["recipe"]);
      const version = await versionOf(records, recipe, recipe.latestNumber);
      if (version === undefined)
        throw new Error(`recipe ${recipe.id} requires its version ${recipe.latestNumber}`);
      const about = await cameFrom(records, recipe, version);
      const flights = await ownPlaces(house, records, at.household, recipe.id);
      const result: ResultFile = {
        format: RESULT_FILE_FORMAT,
        version: 1,
        recipe: about,
        ...(body.kitchen === undefined ? {} : { kitchen: body.kitchen }),
        slots: await slotsIn(records, at.household, version, body),
        ...strengthIn(version),
        ...(version.body.restDays === null ? {} : { restDays: version.body.restDays }),
        flights: flights.map(({ asked, beside, sheets }) => ({
          asked,
          ...(body.withBeside ? { beside: beside.slice(0, 16).map((name) => name.slice(0, 120)) } : {}),
          sheets: numbered(
            sheets,
            flights.flatMap((flight) => flight.sheets),
          ),
        })),
        ...(body.notes === undefined || body.notes.trim() === "" ? {} : { notes: body.notes }),
      };
      const { canonical, sha256 } = await canonicalHash(result, "result");
      const link = await writeRecipeLink(canonical, body.address);
      return {
        result,
        sha256,
        canonical,
        link: link.length > RECIPE_LINK_LIMITS.characters ? null : link,
      };
    }),
};

/** The file that a recipe came in as or was filled from. */
async function cameFrom(
  records: Pick<Reads, "list">,
  { id, householdId, name }: RecipeRow,
  { body }: RecipeVersionRow,
): Promise<ResultFile["recipe"]> {
  const [origin] = body.lineage ?? [];
  if (origin?.sha256 !== undefined) return { name: origin.name, sha256: origin.sha256 };
  const base = await incomingFile(records, householdId, id);
  if (base !== null) return { name: base.file.name, sha256: base.sha256 };
  return refuse(409, {
    code: "recipe_not_passed_on",
    path: ["recipe"],
    limit: "a recipe that came in as a file, or was filled from one",
    received: name,
    message: `a result requires a recipe that came in as a file or was filled from one, got ${name}, which was written here`,
  });
}

async function slotsIn(
  records: Records,
  household: string,
  { body }: RecipeVersionRow,
  { withWhiskeys }: BodyRead<"makeResult">,
): Promise<ResultFile["slots"]> {
  const made: ResultFile["slots"] = [];
  for (const [n, { parts, of, from }] of body.slots.entries()) {
    if (parts === 0) continue;
    const line = { slot: from ?? n + 1, parts };
    const row =
      of.kind === "whiskey" && withWhiskeys ? await records.find("whiskey", household, of.whiskeyId) : null;
    const batch =
      of.kind === "batch" && withWhiskeys ? await records.find("batch", household, of.batchId) : null;
    // Facts of the label; what it tasted of here is this household's own.
    const { profile: _, ...whiskey } = row === null ? { name: batch?.name ?? "" } : namedWhiskey(row);
    made.push(whiskey.name === "" ? line : { ...line, whiskey });
  }
  return made;
}

const strengthIn = ({ body: { waterTo } }: RecipeVersionRow): Pick<ResultFile, "abv"> =>
  waterTo === null ? {} : { abv: abv20OfStrength(strengthOf(waterTo)) };

interface Sheet {
  readonly tasterId: string;
  readonly place: number;
  readonly of: number;
  readonly level: number;
}

/** Tasters by number, in the order of their ids, so that no list says who they are; the same number is the same one throughout. */
function numbered(sheets: readonly Sheet[], all: readonly Sheet[]): ResultFile["flights"][number]["sheets"] {
  const who = [...new Set(all.map(({ tasterId }) => tasterId))].toSorted();
  return sheets.map(({ tasterId, place, of, level }) => ({
    taster: who.indexOf(tasterId) + 1,
    place,
    of,
    level,
  }));
}
