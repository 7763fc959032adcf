import { abv20OfStrength } from "@partsproof/core/alcoholometry";
import { asNoted } from "@partsproof/core/blending";
import { type Contents as Held, type Holding, volumeOf, WATER } from "@partsproof/core/ledger";
import {
  type KnownProfile,
  type MixedProfile,
  mixedProfile,
  type ProfilePart,
} from "@partsproof/core/sensory";
import type { WhiskeyRow } from "../rows.ts";
import { type Shelf, strengthOf, whiskeyLabel } from "../shelf/index.ts";
import type { AllObserved } from "./observed.ts";

/** What the shelf says of a whiskey. A bare number is off by about as much as notes are; null and left out are not known. */
export function keptProfile({ profile }: Pick<WhiskeyRow, "profile">): KnownProfile {
  return Object.fromEntries(
    Object.entries(profile?.intensities ?? {}).flatMap(([attribute, intensity]) => {
      const said = asNoted(intensity);
      return said === null ? [] : [[attribute, { mean: said.value, sd: said.sd }]];
    }),
  );
}

export interface Prediction extends MixedProfile {
  readonly shares: "alcohol" | "volume";
}

/**
 * Y4: what a mix should taste of if it is the sum of its whiskeys, each as the shelf has it and, of what the shelf says nothing, as it
 * was observed. Null where nothing is in it but water.
 */
export function predicted(shelf: Shelf, held: Held, seen: AllObserved): Prediction | null {
  const { shares, parts } = mixedOf(shelf, held, seen);
  return parts.length === 0 ? null : { ...mixedProfile(parts), shares };
}

export interface MixedOf {
  readonly shares: Prediction["shares"];
  readonly parts: readonly (ProfilePart & { readonly id: string })[];
}

/** The whiskeys in a mix, how much of each and what is known of each; water left out. */
export function mixedOf(shelf: Shelf, held: Held, { liquids }: AllObserved): MixedOf {
  const parts = [...held].flatMap(([id, holding]) => {
    const whiskey = id === WATER ? undefined : shelf.whiskeys.get(id);
    return whiskey === undefined ? [] : [{ whiskey, holding }];
  });
  const shares = atOneStrength(parts.map(({ whiskey }) => whiskey)) ? "alcohol" : "volume";
  return {
    shares,
    parts: parts.map(({ whiskey, holding }) => ({
      id: whiskey.id,
      label: whiskeyLabel(whiskey),
      amount: shares === "alcohol" ? ethanolOf(holding) : volumeOf(new Map([[whiskey.id, holding]])),
      profile: { ...liquids.get(`whiskey:${whiskey.id}`)?.whole, ...keptProfile(whiskey) },
    })),
  };
}

const ethanolOf = ({ pricedEthanolG, unpricedEthanolG }: Holding): number =>
  pricedEthanolG + unpricedEthanolG;

/** As a search has it: profiles compare where all were tasted at one strength, within half a per cent; then shares are of the alcohol. */
function atOneStrength(whiskeys: readonly WhiskeyRow[]): boolean {
  const strengths = whiskeys.map(({ profile }) =>
    profile?.tastedAt ? abv20OfStrength(strengthOf(profile.tastedAt)) : Number.NaN,
  );
  return Math.max(...strengths) - Math.min(...strengths) <= 0.5;
}
