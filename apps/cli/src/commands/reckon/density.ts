import { density as densityOf, freezingPoint } from "@partsproof/core/alcoholometry";
import { celsius, massFraction } from "@partsproof/core/quantity";
import type { AnswerOf } from "@partsproof/house/protocol";
import { issueAt, needed, readNumber, refuse } from "../../flags/index.ts";
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
  run: (given) => {
    const kgPerM3 = liquidDensity(given["mass-fraction"], given.celsius);
    const json: AnswerOf<"reckonDensity"> = { kgPerM3 };
    return { json, text: () => printDensity(json) };
  },
});

/** Both are within their limits by now, so what core still refuses is ice. */
function liquidDensity(p: number, t: number): number {
  try {
    return densityOf(massFraction(p), celsius(t));
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    const freezesAt = freezingPoint(massFraction(p));
    const limit = `at least the freezing point, about ${freezesAt?.toFixed(1)} °C`;
    return refuse(issueAt(["celsius"], "mixture_frozen", limit, t, " °C"));
  }
}
