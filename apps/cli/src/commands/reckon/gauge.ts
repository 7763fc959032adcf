import { type BodyOf, Refusal } from "@partsproof/house/protocol";
import { one, onlyOne, readNumber, readStrengthOn, yes } from "../../flags/index.ts";
import { printGauge } from "../../print/gauged.ts";
import { reckoning } from "../command.ts";
import { field, thermometerFlag } from "./instrument-flags.ts";

export const gauge = reckoning({
  name: "gauge",
  says: "True strength from what a hydrometer reads in a liquid that is not at its standard temperature.",
  flags: {
    "reading-proof": one(readStrengthOn("proof60F"), "<proof>", "as read; the scale is right at 60 °F"),
    "reading-abv": one(readStrengthOn("abv20"), "<% vol>", "instead: as read; the scale is right at 20 °C"),
    "reading-density": one(
      readNumber("reading", 500, 1200, "kg/m³"),
      "<kg/m³>",
      "instead: as read; the scale is right at 20 °C",
    ),
    celsius: one(readNumber("temperature", -20, 40, "°C"), "<-20 to 40>", "the liquid's temperature"),
    fahrenheit: one(readNumber("temperature", -4, 104, "°F"), "<-4 to 104>", "instead: in °F"),
    solids: one(
      readNumber("solids", 0, 100_000, "mg in 100 mL"),
      "<mg>",
      "dissolved in 100 mL: oak, sugar, caramel hide strength (27 CFR 30.32)",
    ),
    uncertainty: yes("how far the result may be off, and what most of it comes from"),
    division: one(readNumber("division", 0.001, 100), "<in its unit>", "from mark to mark of the hydrometer"),
    "hydrometer-error": one(
      readNumber("error", 0, 100),
      "<in its unit>",
      "how far it may be off; else one mark",
    ),
    thermometer: thermometerFlag,
  },
  example: "gauge --reading-proof 100 --fahrenheit 70",
  places: {
    solidsMgPer100Ml: "solids",
    "uncertainty.division": "division",
    "uncertainty.error": "hydrometer-error",
  },
  run: async (flags, client) => {
    const { celsius, fahrenheit, solids, uncertainty, division, thermometer } = flags;
    onlyOne({ celsius, fahrenheit });
    const hydrometer = {
      ...field("division", division),
      ...field("error", flags["hydrometer-error"]),
      ...field("thermometer", thermometer),
    };
    const body = {
      reading: typedReading(flags),
      ...field("celsius", celsius),
      ...field("fahrenheit", fahrenheit),
      ...field("solidsMgPer100Ml", solids),
      ...(uncertainty || Object.keys(hydrometer).length > 0 ? { uncertainty: hydrometer } : {}),
    };
    const json = await client("reckonGauge", { body }).catch((error: unknown) => {
      if (!(error instanceof Refusal)) throw error;
      // Which of the three flags the reading came by only its scale tells.
      const flag = FLAG_OF[body.reading.scale];
      throw new Refusal(
        error.status,
        error.issues.map((issue) => (issue.path[0] === "reading" ? { ...issue, path: [flag] } : issue)),
      );
    });
    return { json, text: () => printGauge(json) };
  },
});

const FLAG_OF = {
  abv20: "reading-abv",
  proof60F: "reading-proof",
  density20: "reading-density",
} as const;

function typedReading(flags: {
  readonly "reading-proof": number | undefined;
  readonly "reading-abv": number | undefined;
  readonly "reading-density": number | undefined;
}): BodyOf<"reckonGauge">["reading"] {
  const { "reading-proof": proof, "reading-abv": abv, "reading-density": kgPerM3 } = flags;
  const asked = onlyOne({ "reading-proof": proof, "reading-abv": abv, "reading-density": kgPerM3 });
  if (asked === "reading-proof") return { scale: "proof60F", value: proof ?? 0 };
  return asked === "reading-abv"
    ? { scale: "abv20", value: abv ?? 0 }
    : { scale: "density20", value: kgPerM3 ?? 0 };
}
