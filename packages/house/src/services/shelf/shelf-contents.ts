import { type Contents as Held, contentsOfVessel, describeContents, volumeOf } from "@partsproof/core/ledger";
import type { Cask, Contents } from "../../protocol/index.ts";
import type { Shelf } from "./shelf.ts";
import { liquidLabel } from "./shelf-names.ts";

/** What a vessel holds now, as shown. */
export function contentsOf(shelf: Shelf, vesselId: string): Contents {
  return shownContents(shelf, contentsOfVessel(shelf.state, vesselId));
}

/** Volume of a vessel's contents, mL at 20 °C. */
export function volumeIn(shelf: Shelf, vesselId: string): number {
  return volumeOf(contentsOfVessel(shelf.state, vesselId));
}

/** Any contents of the ledger, in a vessel or only thought of, as shown. */
export function shownContents(shelf: Shelf, held: Held): Contents {
  const told = describeContents(held, shelf.facts);
  return {
    volumeMl: told.volumeMl,
    massG: told.massG,
    abv20: told.abv20,
    proof60F: told.proof60F,
    composition: told.composition.map(({ liquidId, shareOfAlcohol, shareOfMass }) => ({
      liquidId,
      label: liquidLabel(shelf, liquidId),
      shareOfAlcohol,
      shareOfMass,
    })),
    cost: {
      knownMinor: told.cost.known,
      unpricedShareOfMass: told.cost.unpricedShareOfMass,
      perLitreMinor: told.cost.perLitre,
    },
    youngestAge: { years: told.youngestAge.years, why: whyOf(shelf, told.youngestAge) },
    grainShares: told.grainShares.map(({ grain, share }) => ({ grain, share })),
    unknownGrainShare: told.unknownGrainShare,
    casks: told.casks.map(({ species, held: before, shareOfAlcohol }) => ({
      species: species as Cask["species"],
      held: before,
      shareOfAlcohol,
    })),
  };
}

function whyOf(shelf: Shelf, age: ReturnType<typeof describeContents>["youngestAge"]): string {
  if (age.why === "empty") return "no whiskey in it";
  const label = liquidLabel(shelf, age.liquidId);
  return age.why === "stated" ? `stated by ${label}` : `${label} states no age`;
}
