import { needed, readNumber } from "../../flags/index.ts";
import { printTemperature } from "../../print/reckoned.ts";
import { reckoning } from "../command.ts";
import { strengthFlags, typedStrength } from "./strength-flags.ts";

export const temperature = reckoning({
  name: "temperature",
  says: "At which temperature a liquid has a density: two where a weak one is near its densest point.",
  flags: {
    ...strengthFlags,
    density: needed(readNumber("density", 500, 1200, "kg/m³"), "<kg/m³>", "what it has"),
  },
  example: "temperature --abv 0 --density 999.9",
  places: { strength: "abv", kgPerM3: "density" },
  run: async ({ density: kgPerM3, ...given }, client) => {
    const body = { strength: typedStrength(given), kgPerM3 };
    const json = await client("reckonTemperature", { body });
    return { json, text: () => printTemperature(json) };
  },
});
