import type { Intensity, Profile } from "./profile-of.ts";

/** One taster's profile of one glass or whiskey. */
export interface TasterProfile {
  readonly taster: string;
  readonly profile: Profile;
}

/** How a taster uses the scale: says `offset + stretch * (what is agreed - 5) + 5`. */
export interface UseOfScale {
  readonly offset: number;
  readonly stretch: number;
}

export interface Combined {
  readonly profile: Profile;
  readonly scales: ReadonlyMap<string, UseOfScale>;
}

const MIDDLE = 5;
/** How far tasters are taken to differ before anything is known of them: common practice, no source. */
const OFFSET_SD = 1.2;
const STRETCH_SD = 0.25;
/** Two tasters of one liquid differ by so much besides: common practice, no source. */
const BETWEEN_SD = 1;
const ROUNDS = 60;

/**
 * Several notes of the same liquid by one or more tasters, as one profile. Each taster's use of the scale is learned from the
 * attributes that others spoke of as well, and shrunk towards the plain one (a normal prior; penalised alternating least squares, at
 * most 60 rounds). An attribute nobody spoke of stays unknown; "not there at all" (mean 0) is never moved by a scale.
 *
 * @returns means from 0 to 10, and standard deviations that hold the spread of the words, of the tasters, and of the means about each
 * other where tasters disagree
 * @example combineProfiles([{ taster: "a", profile: { "smoke.smoke": { mean: 6, sd: 1 } } }]).profile["smoke.smoke"].mean // 6
 */
export function combineProfiles(notes: readonly TasterProfile[]): Combined {
  const scales = new Map<string, UseOfScale>(notes.map(({ taster }) => [taster, { offset: 0, stretch: 1 }]));
  const said = Map.groupBy(
    notes.flatMap(({ taster, profile }) =>
      Object.entries(profile).map(([attribute, { mean, sd }]) => ({ attribute, taster, mean, sd })),
    ),
    ({ attribute }) => attribute,
  );
  const between = notes.length > 1 ? BETWEEN_SD * BETWEEN_SD : 0;
  // What one taster alone spoke of says nothing of how they use the scale.
  const shared = new Map([...said].filter(([, all]) => all.some(({ taster }) => taster !== all[0]?.taster)));
  const own = Map.groupBy([...shared.values()].flat(), ({ taster }) => taster);
  for (let round = 0; round < ROUNDS && shared.size > 0; round++) {
    const means = agreed(shared, scales, between);
    const before = new Map(scales);
    for (const taster of scales.keys()) scales.set(taster, learned(own.get(taster) ?? [], means));
    centre(scales);
    if (settled(before, scales)) break;
  }
  return { profile: agreed(said, scales, between), scales };
}

const settled = (before: ReadonlyMap<string, UseOfScale>, after: ReadonlyMap<string, UseOfScale>): boolean =>
  [...after].every(([taster, { offset, stretch }]) => {
    const was = before.get(taster) ?? { offset: 0, stretch: 0 };
    return Math.abs(was.offset - offset) < 1e-9 && Math.abs(was.stretch - stretch) < 1e-9;
  });

interface Said extends Intensity {
  readonly attribute: string;
  readonly taster: string;
}

const unscaled = ({ mean }: Intensity, { offset, stretch }: UseOfScale): number =>
  mean <= 0 ? 0 : Math.min(10, Math.max(0, (mean - MIDDLE - offset) / stretch + MIDDLE));

function agreed(
  saidOf: ReadonlyMap<string, readonly Said[]>,
  scales: ReadonlyMap<string, UseOfScale>,
  between: number,
): Profile {
  const profile: Record<string, Intensity> = {};
  for (const [attribute, all] of saidOf) {
    const said = all.map((one) => {
      const scale = scales.get(one.taster) ?? { offset: 0, stretch: 1 };
      const sd = one.sd / scale.stretch;
      return { value: unscaled(one, scale), weight: 1 / (sd * sd + between) };
    });
    const weights = said.reduce((sum, { weight }) => sum + weight, 0);
    const mean = said.reduce((sum, { value, weight }) => sum + weight * value, 0) / weights;
    const apart = said.reduce((sum, { value, weight }) => sum + weight * (value - mean) ** 2, 0) / weights;
    profile[attribute] = { mean, sd: Math.sqrt(1 / weights + apart / said.length) };
  }
  return profile;
}

/**
 * The offset and stretch that fit a taster best to what is agreed, under their priors: two normal equations.
 *
 * @param said of attributes that others spoke of as well
 */
function learned(said: readonly Said[], means: Profile): UseOfScale {
  let [n, x, xx, y, xy] = [1 / OFFSET_SD ** 2, 0, 1 / STRETCH_SD ** 2, 0, 1 / STRETCH_SD ** 2];
  for (const { attribute, mean, sd } of said) {
    const agreedMean = means[attribute]?.mean;
    if (agreedMean === undefined || mean <= 0 || agreedMean <= 0) continue;
    const weight = 1 / (sd * sd + BETWEEN_SD * BETWEEN_SD);
    const [from, to] = [agreedMean - MIDDLE, mean - MIDDLE];
    n += weight;
    x += weight * from;
    xx += weight * from * from;
    y += weight * to;
    xy += weight * from * to;
  }
  const determinant = n * xx - x * x;
  const stretch = Math.min(2, Math.max(0.5, (n * xy - x * y) / determinant));
  return { offset: (y - stretch * x) / n, stretch };
}

/** The tasters' mean offset is 0 and their mean stretch 1: the agreed scale is theirs in common. */
function centre(scales: Map<string, UseOfScale>): void {
  const all = [...scales.values()];
  const offset = all.reduce((sum, scale) => sum + scale.offset, 0) / all.length;
  const stretch = all.reduce((sum, scale) => sum + scale.stretch, 0) / all.length;
  for (const [taster, scale] of scales)
    scales.set(taster, { offset: scale.offset - offset, stretch: scale.stretch / stretch });
}
