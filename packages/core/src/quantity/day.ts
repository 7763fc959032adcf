/** A day in milliseconds: 86 400 s (SI Brochure, 9th edition, table 8). A day by the clock may be an hour longer or shorter. */
export const DAY_MS = 86_400_000;
