import { needed, readNumber } from "../../flags/index.ts";
import { printDensity } from "../../print/reckoned.ts";
import { reckoning } from "../command.ts";

export const density = reckoning({
  name: "density",
  says: "Density of ethanol and water by OIML R 22.",
  flags: {
    "mass-fraction": needed(
      readNumber("mass fraction", 0, 1),
      "<0 to 1>",
      "mass of ethanol over mass of all",
    ),
    celsius: needed(readNumber("temperature", -20, 40, "°C"), "<-20 to 40>", "temperature in °C"),
  },
  example: "density --mass-fraction 0.4 --celsius 20",
  run: async ({ "mass-fraction": massFraction, celsius }, client) => {
    const json = await client("reckonDensity", { body: { massFraction, celsius } });
    return { json, text: () => printDensity(json) };
  },
});
