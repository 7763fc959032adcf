/**
 * Freezing points of ethanol and water mixtures, per cent ethanol by mass beside °C, weakest first: where ice begins to form
 * on cooling.
 *
 * Source: Lange's Handbook of Chemistry, Table 5.13 "Compositions of Aqueous Antifreeze Solutions", ethyl alcohol, read at
 * https://studfile.net/preview/408309/page:7 (edition not stated; the page prints the °C without their minus signs). The
 * first row, water, is the definition of the ice point and not in that table. Figures of other handbooks, from memory, lie up
 * to 1.5 °C below these near -20 °C (30 % mass: -20.5 °C against -19.0 °C here) and within 0.3 °C of them down to -10 °C.
 */
export const FREEZING: readonly (readonly [massPercent: number, celsius: number])[] = [
  [0, 0],
  [2.5, -1],
  [4.8, -2],
  [6.8, -3],
  [11.3, -5],
  [13.8, -6.1],
  [16.4, -7.5],
  [17.5, -8.7],
  [18.8, -9.4],
  [20.3, -10.6],
  [22.1, -12.2],
  [24.2, -14],
  [26.7, -16],
  [29.9, -18.9],
  [33.8, -23.6],
  [39, -28.7],
];
