/** The reference temperature of % vol here, in the EU and at the OIML: 20 °C. */
export const T20 = 20;

/** The reference temperature of US proof, 60 °F (27 CFR 30.11), in °C: 15.5555… Never rounded to 15.56 or 15.6. */
export const T60F = (60 - 32) / 1.8;

/** The reference temperature of some older tables and instruments of per cent by volume, °C. */
export const T15 = 15;
