/**
 * How far a labelled strength may be from the true one, in % vol either way: 0.3 for spirits in Regulation (EU)
 * No 1169/2011, Annex XII, row 4, and in 27 CFR 19.356(c). Both were read.
 */
export const LABEL_TOLERANCE = 0.3;
