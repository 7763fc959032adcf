/**
 * How far the strength on a label may be from the strength in the bottle, in points of % vol, either way.
 *
 * us: 27 CFR 19.356(c), "Variations in alcohol content may not exceed 0.3 percent alcohol by volume above or below the alcohol
 * content stated on the label", read at https://codes.findlaw.com/cfr/title-27-alcohol-tobacco-products-and-firearms/cfr-sect-27-19-356/.
 * eu: Regulation (EU) No 1169/2011, Annex XII, row 4 (other beverages above 1.2 % vol): 0.3 % vol, read in German at
 * https://gesetze.legal/eu/vo_eu_2011_1169/anhang_xii. It comes on top of the error of the analysis, which is not counted here.
 * fruit: the same, row 3 (macerated fruit or parts of plants): 1.5 % vol.
 * printed: a strength gauged by the maker for this bottling, rounded to 0.1: 0.05. Common practice, no source.
 * exact: taken as it stands.
 */
export const LABEL_HALF_WIDTH = { us: 0.3, eu: 0.3, fruit: 1.5, printed: 0.05, exact: 0 } as const;
