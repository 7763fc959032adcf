/**
 * Millilitres in one unit, exact by definition.
 * US fluid ounce: 1/128 of a US gallon of 231 cubic inches, inch = 25.4 mm (NIST Handbook 44, Appendix C): 29.5735295625.
 * Imperial fluid ounce: 1/160 of a gallon of 4.54609 L (UK Units of Measurement Regulations 1995, Schedule): 28.4130625.
 */
export const MILLILITRES_IN: ReadonlyMap<string, number> = new Map([
  ...["", "ml", "millilitre", "millilitres", "milliliter", "milliliters", "cc", "cm3", "cm³"].map(
    (u) => [u, 1] as const,
  ),
  ...["cl", "centilitre", "centilitres", "centiliter", "centiliters"].map((u) => [u, 10] as const),
  ...["dl", "decilitre", "decilitres", "deciliter", "deciliters"].map((u) => [u, 100] as const),
  ...["l", "litre", "litres", "liter", "liters"].map((u) => [u, 1000] as const),
  ...[
    "oz",
    "fl oz",
    "fl. oz.",
    "floz",
    "us fl oz",
    "us oz",
    "ounce",
    "ounces",
    "fluid ounce",
    "fluid ounces",
  ].map((u) => [u, 29.5735295625] as const),
  ...["imp oz", "imp fl oz", "uk oz", "uk fl oz", "imperial oz", "imperial fl oz"].map(
    (u) => [u, 28.4130625] as const,
  ),
]);

/** Grams in one unit, exact. "oz" is never a mass here: on a bar and on a bottle it is a volume. */
export const GRAMS_IN: ReadonlyMap<string, number> = new Map([
  ...["g", "gram", "grams", "gramme", "grammes"].map((u) => [u, 1] as const),
  ...["kg", "kilogram", "kilograms"].map((u) => [u, 1000] as const),
  ...["mg", "milligram", "milligrams"].map((u) => [u, 0.001] as const),
]);

/** Square centimetres in one unit, exact by definition (inch = 25.4 mm). */
export const CM2_IN: ReadonlyMap<string, number> = new Map([
  ...["", "cm2", "cm²", "cm^2", "sq cm"].map((u) => [u, 1] as const),
  ...["mm2", "mm²", "mm^2", "sq mm"].map((u) => [u, 0.01] as const),
  ...["dm2", "dm²", "dm^2", "sq dm"].map((u) => [u, 100] as const),
  ...["in2", "in²", "in^2", "sq in"].map((u) => [u, 6.4516] as const),
]);

/** Centimetres in one unit, exact by definition. */
export const CM_IN: ReadonlyMap<string, number> = new Map([
  ["mm", 0.1],
  ["cm", 1],
  ["in", 2.54],
]);
