/** Whole grams from 10 on, tenths below: a pour by eye is no better than that. */
export function gramsDigits(grams: number): string {
  return grams < 9.95 ? grams.toFixed(1) : String(Math.round(grams));
}

/** Drinks and units to a tenth. */
export const drinksDigits = (count: number): string => count.toFixed(1);

/** The largest whole pour that keeps a taster at or under a limit, in mL; 0 where even 1 mL is too much. */
export function pourToKeep(limitG: number, grams: number, pourMl: number): number {
  return grams > 0 ? Math.floor((pourMl * limitG) / grams) : pourMl;
}
