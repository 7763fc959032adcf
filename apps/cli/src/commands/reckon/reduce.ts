import {
  issueAt,
  many,
  needed,
  one,
  onlyOne,
  readMass,
  readPart,
  readStrength,
  readVolume,
  readWhole,
  readWord,
  refuse,
} from "../../flags/index.ts";
import { printReduce } from "../../print/reduced.ts";
import { reckoning } from "../command.ts";
import {
  celsiusFlag,
  field,
  instrumentFlags,
  instrumentPlaces,
  typedInstruments,
} from "./instrument-flags.ts";

export const reduce = reckoning({
  name: "reduce",
  says: "What to add to take a liquid down, or up, to a strength: water, another liquid, or two.",
  flags: {
    from: one(readStrength, "<strength>", "what it has: 60 or 120proof"),
    part: many(readPart, "<parts>@<strength>", "instead of --from: it is first mixed from these"),
    to: needed(readStrength, "<strength>", "what it is to have"),
    volume: one(readVolume, "<volume>", "the liquid before anything is added"),
    fill: one(readVolume, "<volume>", "instead of --volume: what is to come out in all"),
    "final-mass": one(readMass, "<mass>", "instead: what is to come out in all, by mass"),
    with: many(
      readStrength,
      "<strength>",
      "what is added; else water. Twice: two liquids, and then --volume with --fill or --final-mass",
    ),
    steps: one(readWhole("steps", 1, 100), "<1 to 100>", "the same addition in so many steps, over days"),
    by: one(
      readWord("by", ["volume", "strength"]),
      "<volume|strength>",
      "steps of equal volume; or of strength",
    ),
    celsius: celsiusFlag,
    ...instrumentFlags,
  },
  example: "reduce --from 60 --to 43 --volume 700ml",
  places: {
    ...instrumentPlaces,
    from: "from",
    to: "to",
    parts: "part",
    volumeMl: "volume",
    fillMl: "fill",
    finalG: "final-mass",
    add: "with",
    stepsBy: "by",
  },
  run: async (flags, client) => {
    const { from, part, to, volume, fill, with: add, steps, by, celsius, ...given } = flags;
    const finalG = given["final-mass"];
    onlyOne({ from, part: part.length === 0 ? undefined : part.length });
    if (add.length < 2) onlyOne({ volume, fill, "final-mass": finalG });
    else {
      if (volume === undefined) {
        refuse(issueAt(["volume"], "flag_missing", "--volume, since two liquids are added", null));
      }
      onlyOne({ fill, "final-mass": finalG });
    }
    if (by !== undefined && steps === undefined) {
      refuse(issueAt(["by"], "flag_missing", "--steps beside it", by));
    }
    const body = {
      to,
      ...(from === undefined ? { parts: [...part] } : { from }),
      ...field("volumeMl", volume),
      ...field("fillMl", fill),
      ...field("finalG", finalG),
      ...(add.length === 0 ? {} : { add: [...add] }),
      ...field("steps", steps),
      ...field("stepsBy", by),
      ...field("celsius", celsius),
      ...typedInstruments(given),
    };
    const json = await client("reckonReduce", { body });
    return { json, text: () => printReduce(json) };
  },
});
