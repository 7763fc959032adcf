/**
 * US units, exact by definition. Wine gallon: 231 cubic inches of 16.387064 mL. Pound: avoirdupois.
 *
 * Source: NIST Handbook 44, Appendix C (from memory); 27 CFR 30.11 for the gallon of 231 cubic inches (from memory).
 */
export const WINE_GALLON_ML = 3785.411784;
export const POUND_G = 453.59237;
