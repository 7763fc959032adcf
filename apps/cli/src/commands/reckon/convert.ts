import { one, onlyOne, readNumber, readVolume } from "../../flags/index.ts";
import { printConvert } from "../../print/reckoned.ts";
import { reckoning } from "../command.ts";
import { field } from "./instrument-flags.ts";
import { strengthFlags } from "./strength-flags.ts";

export const convert = reckoning({
  name: "convert",
  says: "Strength by volume at 20 and 15 °C, US proof at 60 °F and per cent by mass, from any one; and what a volume of it is.",
  flags: {
    ...strengthFlags,
    "mass-percent": one(readNumber("mass percent", 0, 100, "%"), "<%>", "instead: per cent by mass"),
    volume: one(readVolume, "<volume>", "at 20 °C: gallons, litres of alcohol, units and drinks in it"),
  },
  example: "convert --abv 40",
  places: { abv20: "abv", proof60F: "proof", massPercent: "mass-percent", volumeMl: "volume" },
  run: async ({ abv, proof, "mass-percent": massPercent, volume }, client) => {
    const asked = onlyOne({ abv, proof, "mass-percent": massPercent }, []);
    const strength = {
      abv: { abv20: abv ?? 0 },
      proof: { proof60F: proof ?? 0 },
      "mass-percent": { massPercent: massPercent ?? 0 },
    }[asked];
    const json = await client("reckonConvert", { body: { ...strength, ...field("volumeMl", volume) } });
    return { json, text: () => printConvert(json) };
  },
});
