/**
 * Grams of alcohol a taster from which the app asks to pour less or to spit: two US standard drinks.
 *
 * The Dietary Guidelines for Americans 2020 to 2025 name 2 drinks or less in a day for men and 1 or less for women, and say
 * that drinking less is better than drinking more; as quoted by the US Centers for Disease Control and Prevention,
 * https://www.cdc.gov/alcohol/fact-sheets/moderate-drinking.htm. A drink of 14 g: core/sensory, standard-drink.data.ts.
 */
export const POUR_LESS_G = 28;
