import type { LearnedLevels } from "./learn-levels.ts";
import { placedParts } from "./placed-parts.ts";
import type { SaidLevel } from "./told.ts";

/**
 * What a mix, or a whiskey alone, is believed to taste of: the mean of its parts by share, what is not known of them together, and how a
 * mix may stray from that mean. By attribute of which anything was said; may reach past 0 and 10.
 *
 * @throws RangeError on amounts that are not 0 or more with one above 0, or of a whiskey that is not given
 * @example mixLevels(learnLevels(whiskeys, notes), { malt: 2, rye: 1 })["smoke.smoke"] // { mean: 4.1, sd: 0.9 }
 */
export function mixLevels(
  learned: LearnedLevels,
  parts: Readonly<Record<string, number>>,
): Readonly<Record<string, SaidLevel>> {
  const { shares, strays } = placedParts(learned, parts);
  const count = learned.whiskeys.length;
  return Object.fromEntries(
    learned.attributes.map(({ id, means, covariance }) => {
      let [mean, variance] = [0, strays];
      for (const [i, share] of shares) {
        mean += share * (means[i] as number);
        for (const [j, other] of shares) variance += share * other * (covariance[i * count + j] as number);
      }
      return [id, { mean, sd: Math.sqrt(variance) }];
    }),
  );
}
