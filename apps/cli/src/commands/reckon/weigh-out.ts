import {
  issueAt,
  many,
  one,
  onlyOne,
  readMass,
  readNumber,
  readPart,
  readPouredPart,
  readStrength,
  readVolume,
  readWhole,
  refuse,
  some,
} from "../../flags/index.ts";
import { printWeighOut } from "../../print/weighed.ts";
import { reckoning } from "../command.ts";
import {
  celsiusFlag,
  field,
  instrumentFlags,
  instrumentPlaces,
  typedInstruments,
} from "./instrument-flags.ts";
import { inAirFlag } from "./weigh.ts";

export const weighOut = reckoning({
  name: "weigh-out",
  says: "Grams to pour of each part; after an overshoot, what is left to pour.",
  flags: {
    part: some(readPart, "<parts>@<strength>", "again for each liquid, in the order of pouring"),
    volume: one(readVolume, "<volume>", "the sum of the parts, before contraction, at 20 °C"),
    fill: one(readVolume, "<volume>", "instead: what is to come out in all, at 20 °C"),
    "final-mass": one(readMass, "<mass>", "instead: what is to come out in all, by mass"),
    to: one(readStrength, "<strength>", "the strength to take them to"),
    with: one(readStrength, "<strength>", "what takes them there; else water"),
    poured: many(readPouredPart, "<part>=<mass>", "what really went in so far: 1=440 for the first"),
    reading: many(
      readNumber("reading", -100_000, 100_000, "g"),
      "<g>",
      "instead: of a scale that was not zeroed; the vessel alone, then after each part",
    ),
    done: many(readWhole("part", 1, 24), "<part>", "no more of this one can be poured"),
    vessel: one(readVolume, "<volume>", "what the vessel holds at most, at 20 °C"),
    celsius: celsiusFlag,
    "in-air": inAirFlag,
    ...instrumentFlags,
  },
  example: "weigh-out --part 2@62.4 --part 1@46 --fill 700ml",
  places: {
    ...instrumentPlaces,
    parts: "part",
    volumeMl: "volume",
    fillMl: "fill",
    finalG: "final-mass",
    vesselMl: "vessel",
    readingsG: "reading",
    to: "to",
    add: "with",
  },
  run: async (flags, client) => {
    const { part, volume, fill, to, with: add, poured, reading, done, vessel, celsius, ...given } = flags;
    const finalG = given["final-mass"];
    onlyOne({ volume, fill, "final-mass": finalG });
    if (add !== undefined && to === undefined) {
      refuse(issueAt(["with"], "flag_missing", "--to beside it", add.value));
    }
    if (poured.length > 0 && reading.length > 0) {
      refuse(issueAt(["reading"], "flags_exclude", "no --poured beside it", reading.length));
    }
    const grams = new Map<number, number>();
    for (const [index, [n, g]] of poured.entries()) {
      needPart(n, part.length, ["poured", index]);
      // Poured in two goes is poured.
      grams.set(n, (grams.get(n) ?? 0) + g);
    }
    for (const [index, n] of done.entries()) needPart(n, part.length, ["done", index]);
    const body = {
      parts: part.map((one_, n) => ({
        ...one_,
        ...field("pouredG", grams.get(n + 1)),
        done: done.includes(n + 1),
      })),
      ...(reading.length === 0 ? {} : { readingsG: [...reading] }),
      ...field("volumeMl", volume),
      ...field("fillMl", fill),
      ...field("finalG", finalG),
      ...field("vesselMl", vessel),
      ...field("to", to),
      ...field("add", add),
      ...field("celsius", celsius),
      inAir: given["in-air"],
      ...typedInstruments(given),
    };
    const json = await client("reckonWeighOut", { body });
    return { json, text: () => printWeighOut(json) };
  },
});

function needPart(n: number, count: number, path: readonly (string | number)[]): void {
  if (n > count) refuse(issueAt(path, "unknown_part", `the number of a part, 1 to ${count}`, n));
}
