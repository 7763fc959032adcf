/**
 * How dissolved solids hide strength.
 *
 * Source: 27 CFR 30.32(b), "0.1 gram (100 milligrams) of solids per 100 milliliters of spirits in the range of 80-100 degrees proof
 * will obscure the true proof by 0.4 of one degree of proof", read at https://www.law.cornell.edu/cfr/text/27/30.32. The limits of 400
 * and 600 mg are those of 30.31 (as the former 13.31, read at https://books.google.co.ke/books?id=ws5x6QbJDwQC&pg=PA161).
 */
export const OBSCURATION = {
  /** Proof hidden by 1 mg of solids in 100 mL. */
  proofPerMg: 0.004,
  /** The range of proof for which the factor was found. */
  fromProof: 80,
  toProof: 100,
  /** At gauge proof, mg in 100 mL: up to here a hydrometer is taken as it reads; */
  addAboveMg: 400,
  /** and above here the liquid has to be distilled, or measured by a laboratory. */
  distilAboveMg: 600,
} as const;
