import { within } from "../quantity/index.ts";
import type { Input } from "./input.ts";
import { rectangular } from "./spreads.ts";

/** How far the obscuration of dissolved solids may be off, as a share of itself. Common practice, no source. */
const SHARE_OFF = 0.1;

/**
 * Dissolved solids, mg in 100 mL, as what they hide is known: rectangular within a tenth of themselves, since the factor of 27
 * CFR 30.32 is a rule of experience (common practice, no source for the tenth).
 *
 * Domain: 0 to 100 000 mg in 100 mL. Accuracy: a guess. Cost: nothing.
 *
 * @throws RangeError outside the domain.
 * @example
 * dissolvedSolids({ id: "s", mgPer100Ml: 200 }).spreads[0].halfWidth; // 20
 */
export function dissolvedSolids(solids: { readonly id: string; readonly mgPer100Ml: number }): Input {
  const { id, mgPer100Ml } = solids;
  within("solids", "mg in 100 mL", mgPer100Ml, 0, 100_000);
  const spreads = rectangular(SHARE_OFF * mgPer100Ml);
  return {
    id,
    kind: "other",
    words: "the rule for dissolved solids",
    value: mgPer100Ml,
    spreads,
    low: 0,
    high: 100_000,
  };
}
