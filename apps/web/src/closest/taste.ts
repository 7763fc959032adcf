import { asNoted, type Intensity } from "@partsproof/core/blending";
import type { Whiskey } from "@partsproof/house/protocol";
import { abv20OfStated } from "../mixing/index.ts";

/** What a whiskey tastes of: by attribute, null where nobody has said. */
export interface Taste {
  readonly values: Readonly<Record<string, Exclude<Intensity, number>>>;
  /** % vol it was tasted at; null where not known. */
  readonly tastedAt: number | null;
}

/** A noted number is taken to be off by about as much as notes are, unless it says by how much. */
export function tasteOf({ profile }: Pick<Whiskey, "profile">): Taste | null {
  const said = Object.entries(profile?.intensities ?? {});
  if (profile === null || !said.some(([, intensity]) => intensity !== null)) return null;
  return {
    values: Object.fromEntries(said.map(([attribute, intensity]) => [attribute, asNoted(intensity)])),
    tastedAt: profile.tastedAt === null ? null : abv20OfStated(profile.tastedAt),
  };
}
