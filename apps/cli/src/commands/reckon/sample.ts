import { needed, readMass, readVolume } from "../../flags/index.ts";
import { printSample } from "../../print/weighed.ts";
import { reckoning } from "../command.ts";
import {
  celsiusFlag,
  field,
  instrumentFlags,
  instrumentPlaces,
  typedInstruments,
} from "./instrument-flags.ts";
import { inAirFlag } from "./weigh.ts";

export const sample = reckoning({
  name: "sample",
  says: "How strong an unlabelled sample is, from what it weighs and measures.",
  flags: {
    grams: needed(readMass, "<mass>", "as the scale shows it, the vessel taken off"),
    ml: needed(readVolume, "<volume>", "as read at --celsius"),
    celsius: celsiusFlag,
    "in-air": inAirFlag,
    ...instrumentFlags,
  },
  example: "sample --grams 94.70 --ml 100 --in-air",
  places: instrumentPlaces,
  run: async ({ grams, ml, celsius, "in-air": inAir, ...given }, client) => {
    const body = { grams, ml, ...field("celsius", celsius), inAir, ...typedInstruments(given) };
    const json = await client("reckonSample", { body });
    return { json, text: () => printSample(json) };
  },
});
