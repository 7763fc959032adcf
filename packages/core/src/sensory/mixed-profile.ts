/** An intensity of 0 to 10 and the standard deviation of what is known of it. */
export interface KnownIntensity {
  readonly mean: number;
  readonly sd: number;
}
/** By attribute; one that is not there is unknown, never zero. */
export type KnownProfile = Readonly<Record<string, KnownIntensity>>;

/** What goes into a mix: how much of it, in any unit, and what is known of its taste. */
export interface ProfilePart {
  readonly label: string;
  readonly amount: number;
  readonly profile: KnownProfile;
}

export interface MixedProfile {
  readonly profile: KnownProfile;
  /** Attributes of some part that another part has nothing said of, with the labels of those. */
  readonly unknown: Readonly<Record<string, readonly string[]>>;
}

/**
 * What a mix tastes of if it is the sum of its parts: the mean of their intensities by their amounts. That mixing is linear is an
 * assumption, made so that what mixing really did can be seen against it. Common practice, no source.
 *
 * An attribute is known of the mix where it is known of every part above 0; errors of different parts are independent.
 *
 * @returns means from 0 to 10; sd the square root of the sum of (share × sd)²
 * @throws RangeError unless amounts are 0 or more and one is above 0
 * @example
 * mixedProfile([
 *   { label: "Malt", amount: 3, profile: { "smoke.smoke": { mean: 8, sd: 1 } } },
 *   { label: "Rye", amount: 1, profile: { "smoke.smoke": { mean: 0, sd: 1 } } },
 * ]).profile["smoke.smoke"] // { mean: 6, sd: 0.79 }
 */
export function mixedProfile(parts: readonly ProfilePart[]): MixedProfile {
  const bad = parts.find(({ amount }) => !(amount >= 0 && amount < Infinity));
  if (bad !== undefined)
    throw new RangeError(`mixedProfile requires amounts of 0 or more, got ${bad.amount}`);
  const poured = parts.filter(({ amount }) => amount > 0);
  const all = poured.reduce((sum, { amount }) => sum + amount, 0);
  if (poured.length === 0) throw new RangeError("mixedProfile requires an amount above 0, got none");
  const attributes = [...new Set(poured.flatMap(({ profile }) => Object.keys(profile)))];
  const profile: Record<string, KnownIntensity> = {};
  const unknown: Record<string, readonly string[]> = {};
  for (const attribute of attributes) {
    const silent = poured.filter((part) => part.profile[attribute] === undefined);
    if (silent.length > 0) {
      unknown[attribute] = [...new Set(silent.map(({ label }) => label))];
      continue;
    }
    let [mean, variance] = [0, 0];
    for (const part of poured) {
      const said = part.profile[attribute] as KnownIntensity;
      mean += (part.amount / all) * said.mean;
      variance += ((part.amount / all) * said.sd) ** 2;
    }
    profile[attribute] = { mean, sd: Math.sqrt(variance) };
  }
  return { profile, unknown };
}
