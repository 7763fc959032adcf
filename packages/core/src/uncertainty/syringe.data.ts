/**
 * Tolerance on graduated capacity of single-use syringes: of the volume V the syringe holds and the volume v pushed out.
 * Below half of V: share of V plus share of v; from half on: share of v.
 *
 * Source: ISO 7886-1:1993, Table 1, as worked out for 1 and 10 mL syringes in P. Phillips, "Syringe accuracy (TOGC) estimates
 * for ISO 7886-1" (2016), read at http://www.smtl.co.uk/images/people/petephillips/Calculating-ISO-7886-TOGC.Rmd; that the
 * change is at 5 mL is from memory.
 */
export const SYRINGE = {
  largestSmallMl: 5,
  small: { ofCapacity: 0.015, ofPushed: 0.02, fromHalf: 0.05 },
  large: { ofCapacity: 0.015, ofPushed: 0.01, fromHalf: 0.04 },
} as const;
