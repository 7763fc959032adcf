/**
 * Thermal cubic expansion of hydrometer glass, per °C: 0.000 025.
 *
 * Source: ISO 1768:1975, "Glass hydrometers. Conventional value for the thermal cubic expansion coefficient", clause 3, read
 * at https://www.ulstandardspdf.com/iso-1768-1975-pdf-free.html. The conventional value for tables, whatever the glass.
 */
export const GLASS_EXPANSION = 25e-6;
