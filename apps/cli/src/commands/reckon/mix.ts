import { one, readPart, readVolume, some } from "../../flags/index.ts";
import { printMix } from "../../print/reckoned.ts";
import { reckoning } from "../command.ts";
import {
  celsiusFlag,
  field,
  instrumentFlags,
  instrumentPlaces,
  typedInstruments,
} from "./instrument-flags.ts";

const DEFAULT_ML = 100;

export const mix = reckoning({
  name: "mix",
  says: "Parts and strengths in, strength and proof out, contraction counted.",
  flags: {
    part: some(readPart, "<parts>@<strength>", "again for each liquid; 2@62.4 or 2@124.8proof; water is 1@0"),
    volume: one(
      readVolume,
      "<volume>",
      `the sum poured, before contraction, at 20 °C; else ${DEFAULT_ML} ml`,
    ),
    celsius: celsiusFlag,
    ...instrumentFlags,
  },
  example: "mix --part 2@62.4 --part 1@46 --volume 750ml",
  places: { ...instrumentPlaces, parts: "part", volumeMl: "volume" },
  run: async ({ part, volume = DEFAULT_ML, celsius, ...given }, client) => {
    const body = {
      parts: [...part],
      volumeMl: volume,
      ...field("celsius", celsius),
      ...typedInstruments(given),
    };
    const json = await client("reckonMix", { body });
    return { json, text: () => printMix(volume, json) };
  },
});
