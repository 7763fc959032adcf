import { one, onlyOne, readMass, readVolume, yes } from "../../flags/index.ts";
import { printWeigh } from "../../print/weighed.ts";
import { reckoning } from "../command.ts";
import {
  celsiusFlag,
  field,
  instrumentFlags,
  instrumentPlaces,
  typedInstruments,
} from "./instrument-flags.ts";
import { strengthFlags, typedStrength } from "./strength-flags.ts";

/** Whether the grams are what a scale shows in air. */
export const inAirFlag = yes("grams are a scale's reading in air of 1.2 kg/m³; else the mass, as in vacuum");

export const weigh = reckoning({
  name: "weigh",
  says: "What a volume of a liquid weighs, or how much so many grams of it are.",
  flags: {
    ml: one(readVolume, "<volume>", "as read at --celsius"),
    grams: one(readMass, "<mass>", "instead: as the scale shows it"),
    ...strengthFlags,
    celsius: celsiusFlag,
    "in-air": inAirFlag,
    ...instrumentFlags,
  },
  example: "weigh --ml 100 --abv 40",
  places: { ...instrumentPlaces, strength: "abv" },
  run: async ({ ml, grams, abv, proof, celsius, "in-air": inAir, ...given }, client) => {
    onlyOne({ ml, grams });
    const body = {
      strength: typedStrength({ abv, proof }),
      ...field("ml", ml),
      ...field("grams", grams),
      ...field("celsius", celsius),
      inAir,
      ...typedInstruments(given),
    };
    const json = await client("reckonWeigh", { body });
    return { json, text: () => printWeigh(json) };
  },
});
