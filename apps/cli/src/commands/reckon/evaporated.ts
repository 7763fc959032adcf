import { needed, one, readLevelAt, readNumber } from "../../flags/index.ts";
import { printEvaporated } from "../../print/reduced.ts";
import { reckoning } from "../command.ts";
import { field, instrumentFlags, instrumentPlaces, typedInstruments } from "./instrument-flags.ts";

const readCelsius = readNumber("temperature", -20, 40, "°C");

export const evaporated = reckoning({
  name: "evaporated",
  says: "How much ethanol and water left a vessel, from its level and strength before and after.",
  flags: {
    before: needed(readLevelAt, "<volume>@<strength>", "level and strength then: 700ml@62.4"),
    after: needed(readLevelAt, "<volume>@<strength>", "level and strength now: 650ml@61"),
    "celsius-before": one(readCelsius, "<-20 to 40>", "temperature then; else 20 °C"),
    "celsius-after": one(readCelsius, "<-20 to 40>", "temperature now; else 20 °C"),
    ...instrumentFlags,
  },
  example: "evaporated --before 700ml@62.4 --after 650ml@61",
  places: {
    ...instrumentPlaces,
    "before.celsius": "celsius-before",
    "after.celsius": "celsius-after",
    before: "before",
    after: "after",
  },
  run: async ({ before, after, "celsius-before": was, "celsius-after": is, ...given }, client) => {
    const body = {
      before: { ...before, ...field("celsius", was) },
      after: { ...after, ...field("celsius", is) },
      ...typedInstruments(given),
    };
    const json = await client("reckonEvaporated", { body });
    return { json, text: () => printEvaporated(json) };
  },
});
