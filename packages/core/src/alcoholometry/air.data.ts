/**
 * The air and the weights of a conventional weighing, kg/m³: air 1.2, weights 8000, at 20 °C.
 *
 * Source: OIML D 28 (2004), "Conventional value of the result of weighing in air"; the figures read at
 * https://metrology.net/wiki/testprocess-measure-mass-conventional. A kitchen scale is
 * adjusted with such weights, so it shows the conventional mass.
 */
export const CONVENTIONAL_AIR = { airKgPerM3: 1.2, weightsKgPerM3: 8000 } as const;
