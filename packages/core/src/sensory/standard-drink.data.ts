/**
 * Grams of ethanol in one standard drink.
 *
 * US: 14 g (0.6 US fl oz of ethanol), National Institute on Alcohol Abuse and Alcoholism, "What is a standard
 * drink?", https://www.niaaa.nih.gov/alcohols-effects-health/what-standard-drink.
 * UK: 8 g (10 mL of ethanol) a unit, UK Chief Medical Officers' Low Risk Drinking Guidelines (2016).
 * Both figures read in https://en.wikipedia.org/wiki/Standard_drink; the primary pages were not read.
 */
export const US_STANDARD_DRINK_G = 14;
export const UK_UNIT_G = 8;

/**
 * Density of ethanol at 20 °C in g/mL: no glass holds more ethanol a millilitre.
 * OIML R 22 (1975), the general formula at mass fraction 1: 789.24 kg/m³.
 */
export const ETHANOL_G_PER_ML = 0.78924;

/**
 * Grams of alcohol for one taster above which to spit or pour less: two US standard drinks.
 *
 * The Dietary Guidelines for Americans 2020 to 2025 name 2 drinks or less in a day for men and 1 or less for women, and say
 * that drinking less is better than drinking more; as quoted by the US Centers for Disease Control and Prevention,
 * https://www.cdc.gov/alcohol/fact-sheets/moderate-drinking.htm.
 */
export const POUR_LESS_G = 28;
