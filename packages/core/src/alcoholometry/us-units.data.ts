/**
 * US units, exact by definition. Wine gallon: 231 cubic inches of 16.387064 mL. Pound: avoirdupois.
 *
 * Source: NIST Handbook 44, Appendix C (from memory); 27 CFR 30.11 for the gallon of 231 cubic inches (from memory).
 */
export const WINE_GALLON_ML = 3785.411784;
export const POUND_G = 453.59237;

/**
 * The alcohol that US gauging tables are made with: its specific gravity at 60 °F referred to water at 60 °F.
 *
 * Source: 27 CFR 19.1, "Proof gallon. A gallon of liquid at 60 degrees Fahrenheit which contains 50 percent by volume of ethyl
 * alcohol having a specific gravity of 0.7939 at 60 degrees Fahrenheit referred to water at 60 degrees Fahrenheit as unity", read at
 * https://www.law.cornell.edu/cfr/text/27/19.1 (its definition page). Pure ethanol by OIML R 22 has 0.793818.
 */
export const STATUTORY_ALCOHOL_SG = 0.7939;
