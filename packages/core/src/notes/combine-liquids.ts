import { combineProfiles, type UseOfScale } from "./combine-profiles.ts";
import type { Profile } from "./profile-of.ts";

/** One taster's profile of one pour of a liquid, all of it or by parts of the tasting. */
export interface LiquidNote {
  readonly liquid: string;
  readonly taster: string;
  readonly profile: Profile;
}

export interface CombinedLiquids {
  readonly profiles: ReadonlyMap<string, Profile>;
  readonly scales: ReadonlyMap<string, UseOfScale>;
}

/**
 * The profiles of several liquids at once: each taster's use of the scale is learned from all that they and others spoke of, whatever
 * it was poured from, and taken out. See `combineProfiles`.
 */
export function combineLiquids(notes: readonly LiquidNote[]): CombinedLiquids {
  const liquids = [...new Set(notes.map(({ liquid }) => liquid))];
  const at = new Map(liquids.map((liquid, i) => [liquid, `${i} `]));
  const { profile, scales } = combineProfiles(
    notes.map(({ liquid, taster, profile: own }) => ({
      taster,
      profile: Object.fromEntries(
        Object.entries(own).map(([attribute, said]) => [`${at.get(liquid)}${attribute}`, said]),
      ),
    })),
  );
  const of = (liquid: string): Profile => {
    const prefix = at.get(liquid) ?? "";
    return Object.fromEntries(
      Object.entries(profile).flatMap(([key, said]) =>
        key.startsWith(prefix) ? [[key.slice(prefix.length), said]] : [],
      ),
    );
  };
  return { profiles: new Map(liquids.map((liquid) => [liquid, of(liquid)])), scales };
}
