import type { TrialSet } from "../../protocol/index.ts";
import { type FlightEvidence, revealedEvidence } from "../evidence/index.ts";
import { playedIn } from "../lineage/index.ts";
import type { House, Records } from "../ports.ts";
import type { TrialSetRow } from "../rows.ts";
import { type Shelf, shelfState, shownContents } from "../shelf/index.ts";
import { contentsOfVessel } from "@partsproof/core/ledger";
import { bottlesOf, type TrialPour } from "./set-bottles.ts";
import { standingGlasses } from "./set-standing.ts";

/** Shows sets of one household as they are now. */
export async function trialSetShower(
  records: Records,
  house: House,
  householdId: string,
): Promise<(row: TrialSetRow) => TrialSet> {
  const shelf = await shelfState(records, householdId);
  const flights = await revealedEvidence(house, records, householdId);
  return (row) => shown(shelf, flights, row);
}

function shown(shelf: Shelf, flights: readonly FlightEvidence[], row: TrialSetRow): TrialSet {
  const { id, version, name, note, createdAt, asked, plan, made, madeAt } = row;
  return {
    id,
    version,
    name,
    note,
    createdAt,
    asked,
    plan,
    bottles: bottlesOf(shelf, asked, plan.parts, poursLeft(row)),
    made: made
      .toSorted((a, b) => a.trial - b.trial)
      .map(({ trial, vesselId }) => {
        const { volumeMl, abv20 } = shownContents(shelf, contentsOfVessel(shelf.state, vesselId));
        return {
          trial,
          vesselId,
          label: shelf.vessels.get(vesselId)?.label ?? "",
          leftMl: volumeMl,
          abv20,
          flights: playedIn(flights, `vessel:${vesselId}`),
        };
      }),
    madeAt,
    flight: flightOf(shelf, row),
  };
}

/** B6, B7: each glass of the flight that a set is poured for, and what it can be poured from by now. */
function flightOf(shelf: Shelf, { asked: { flight }, made }: TrialSetRow): TrialSet["flight"] {
  if (flight === undefined) return null;
  const standing = new Map(standingGlasses(shelf, flight).map((one) => [one.glass, one]));
  return {
    question: flight.question,
    targetNameId: flight.targetNameId,
    glasses: flight.glasses.map(({ of, kind, why }, i) => {
      const ready = standing.get(i + 1);
      if (ready !== undefined) {
        const { vesselId, label, keepMl, insteadOf } = ready;
        return { trial: null, vesselId, label, keepMl, insteadOf, kind, why };
      }
      const trial = "trial" in of ? of.trial : null;
      const vial = made.find((one) => one.trial === trial)?.vesselId;
      const vessel = vial === undefined ? undefined : shelf.vessels.get(vial);
      return {
        trial,
        vesselId: vessel?.id ?? null,
        label: vessel?.label ?? `trial ${trial}`,
        keepMl: null,
        insteadOf: null,
        kind,
        why,
      };
    }),
  };
}

/** The trials of a set that are not poured yet, as planned. */
function poursLeft({ plan, made }: Pick<TrialSetRow, "plan" | "made">): readonly TrialPour[] {
  const poured = new Set(made.map(({ trial }) => trial));
  return plan.trials.map(({ ml }, i) => ({ trial: i + 1, ml })).filter(({ trial }) => !poured.has(trial));
}
