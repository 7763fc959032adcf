import type { When } from "./script-clock.ts";

/** The name says that it is invented wherever the household is shown. */
export const HOUSEHOLD = { name: "Saltreach demo (invented)", currency: "USD" };
export const BEGINS: When = [200, "17:00"];

/** Four who taste; Wynna from next door pours. */
export const TASTERS = ["Ilka", "Jorren", "Pell", "Tamsel"];
export const POURER = "Wynna";
