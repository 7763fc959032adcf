import type { BatchMake } from "../../protocol/index.ts";
import type { Handlers } from "../handler.ts";
import { knownHousehold } from "../known.ts";
import { knownRecipe } from "../recipes/index.ts";
import type { RecipeVersionRow } from "../rows.ts";
import { refuse } from "../refuse.ts";
import { freeMl, type Shelf, shelfState } from "../shelf/index.ts";
import { knownVersion } from "./batches.ts";
import { batchLimits, planOf } from "./plan.ts";

export const makeHandlers: Handlers<"makeBatch"> = {
  makeBatch: ({ house, at, body }) =>
    house.store.transaction(async (records) => {
      await knownHousehold(records, at.household);
      const recipe = await knownRecipe(records, at.household, body.recipeId, ["recipeId"]);
      const version = await knownVersion(records, recipe, body.recipeNumber);
      return makeOf(await shelfState(records, at.household), version, body);
    }),
};

interface Asked {
  readonly vesselMl: number;
  readonly headMl: number;
  readonly vessels: number;
  readonly pourMl: number;
}

/** R3a: the largest batch for so many vessels that the shelf allows, and what it leaves. Moves nothing. */
function makeOf(
  shelf: Shelf,
  version: RecipeVersionRow,
  { vesselMl, headMl, vessels, pourMl }: Asked,
): BatchMake {
  const roomMl = (vesselMl - headMl) * vessels;
  if (!(roomMl > 0))
    refuse(422, {
      code: "no_room",
      path: ["headMl"],
      limit: `less than ${vesselMl} mL`,
      received: headMl,
      message: `head-space requires less than the vessel's ${vesselMl} mL, got ${headMl} mL`,
    });
  const limits = batchLimits(shelf, version);
  const largestMl = Math.min(...limits.map(({ allowsMl }) => allowsMl));
  const finalMl = Math.min(roomMl, largestMl);
  const plan = finalMl > 0.001 ? planOf(shelf, version, finalMl) : null;
  const left = (plan?.steps ?? []).flatMap(({ pours }) =>
    pours.flatMap(({ from, label, ml }) =>
      from.kind === "vessel"
        ? [
            {
              vesselId: from.vesselId,
              label,
              takenMl: ml,
              leftMl: Math.max(0, freeMl(shelf, from.vesselId) - ml),
            },
          ]
        : [],
    ),
  );
  const perLitre = plan?.result.cost.perLitreMinor ?? null;
  return {
    roomMl,
    largestMl,
    finalMl,
    limitedBy:
      largestMl >= roomMl ? null : (limits.find(({ allowsMl }) => allowsMl === largestMl)?.label ?? null),
    limits,
    plan,
    left,
    perVesselMinor: perLitre === null ? null : (perLitre * finalMl) / vessels / 1000,
    perPourMinor: perLitre === null ? null : (perLitre * pourMl) / 1000,
    pourMl,
  };
}
