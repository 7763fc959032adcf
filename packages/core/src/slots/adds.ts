import { known } from "../blending/index.ts";
import type { Axes } from "./axes.ts";
import type { RuledWhiskey } from "./ruled-whiskey.ts";

/** What a whiskey adds to the mix on every axis, from `low` to `high`, and the youngest age it may have. */
export type Adds = {
  readonly low: Float64Array;
  readonly high: Float64Array;
  readonly youngestLow: number;
  readonly youngestHigh: number;
};

/** With its share of the mix. What is not known may be anything on the scale; an age, anything from 0 up. */
export function addsOf(axes: Axes, whiskey: RuledWhiskey, share: number): Adds {
  const low = new Float64Array(axes.size);
  const high = new Float64Array(axes.size);
  for (const [a, name] of axes.attributes.entries()) {
    const said = Object.hasOwn(whiskey.profile, name) ? whiskey.profile[name] : null;
    const value = typeof said === "object" ? said?.value : said;
    low[a] = share * (value ?? 0);
    high[a] = share * (value ?? 10);
  }
  if (axes.strength) low[axes.size - 1] = high[axes.size - 1] = share * whiskey.abv20;
  const { ageYears } = whiskey;
  return { low, high, youngestLow: ageYears ?? 0, youngestHigh: known(ageYears) ? ageYears : Infinity };
}
