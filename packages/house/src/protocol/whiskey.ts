import { z } from "zod";
import {
  Id,
  Instant,
  LongText,
  Money,
  OptionalText,
  ShortText,
  StatedStrength,
  Version,
  VolumeMl,
} from "./fields.ts";
import { Profile } from "./profile.ts";

export const WhiskeyKind = z.enum([
  "malt",
  "pot still",
  "rye",
  "wheat",
  "corn",
  "bourbon",
  "grain",
  "blend",
  "other",
]);
export const WoodSpecies = z.enum([
  "American oak",
  "European oak",
  "Japanese oak",
  "other oak",
  "other wood",
  "not known",
]);
export type WoodSpecies = z.infer<typeof WoodSpecies>;

/** Per cent of the mash by mass; the shares of one whiskey add up to 100. */
export const GrainShare = z.object({ grain: ShortText, percent: z.number().min(0).max(100) });
export type GrainShare = z.infer<typeof GrainShare>;

/** `held` is what the cask held before: "nothing" for a virgin cask, "bourbon", "port", "not known", … */
export const Cask = z.object({ species: WoodSpecies, held: ShortText });
export type Cask = z.infer<typeof Cask>;

const facts = {
  maker: ShortText,
  name: ShortText,
  /** Release, batch or year; "" where there is only one. */
  release: OptionalText,
  kind: WhiskeyKind,
  strength: StatedStrength,
  /** Age statement in whole or half years; null where none is stated. */
  ageYears: z.number().min(0).max(120).nullable(),
  /** null where the grain bill is not known. */
  grains: z.array(GrainShare).max(12).nullable(),
  casks: z.array(Cask).max(12),
  /** Distillery or group of distilleries it was distilled at; null where not known. */
  distilledAt: OptionalText.nullable(),
  /** Where it comes from, the narrower first: "Saltreach Island, the north"; null where not known. */
  place: OptionalText.nullable(),
  /** Price of one full bottle; null where not known. */
  priceMinor: Money.nullable(),
  bottleMl: VolumeMl,
  availability: z.enum(["sold", "gone"]),
  note: LongText,
  /** What it tasted of; null where nobody has said. */
  profile: Profile.nullable(),
};

export const WhiskeyDraft = z.object({
  ...facts,
  release: facts.release.default(""),
  kind: facts.kind.default("other"),
  ageYears: facts.ageYears.default(null),
  grains: facts.grains.default(null),
  casks: facts.casks.default([]),
  distilledAt: facts.distilledAt.default(null),
  place: facts.place.default(null),
  priceMinor: facts.priceMinor.default(null),
  bottleMl: facts.bottleMl.default(700),
  availability: facts.availability.default("sold"),
  note: facts.note.default(""),
  profile: facts.profile.default(null),
});
export type WhiskeyDraft = z.infer<typeof WhiskeyDraft>;

export const WhiskeyEdit = z.object({ version: Version, ...z.object(facts).partial().shape });
export type WhiskeyEdit = z.infer<typeof WhiskeyEdit>;

export const Whiskey = z.object({
  id: Id,
  version: Version,
  ...facts,
  /** Derived from `strength`. */
  abv20: z.number(),
  proof60F: z.number(),
  createdAt: Instant,
  updatedAt: Instant,
});
export type Whiskey = z.infer<typeof Whiskey>;
