import type { BodyOf, OakPiece } from "@partsproof/house/protocol";
import {
  issueAt,
  needed,
  one,
  readArea,
  readMass,
  readPiece,
  readVolume,
  readWhole,
  refuse,
} from "../../flags/index.ts";
import { printOak } from "../../print/oak.ts";
import { reckoning } from "../command.ts";

export const oak = reckoning({
  name: "oak",
  says: "How much wood there is to a litre, against a 200 L cask, and what it soaks up.",
  flags: {
    area: one(readArea, "<area>", "contact area of the wood, such as 66cm2"),
    piece: one(
      readPiece,
      "<shape>=<lengths>",
      "instead: stick, stave, chips or cube=10x10x160mm; spiral=outer x core x fin x pitch x length",
    ),
    count: one(readWhole("count", 1, 1000), "<number>", "how many of the piece, 1 where left out"),
    grams: one(readMass, "<mass>", "what the wood weighs; else worked out from its size"),
    volume: needed(readVolume, "<volume>", "what it lies in"),
  },
  example: "oak --area 66cm2 --grams 10.9 --volume 750ml",
  places: { areaCm2: "area", volumeMl: "volume" },
  run: async ({ area, piece, count, grams, volume }, client) => {
    const chips = piece?.shape === "chips";
    if (chips && grams === undefined)
      refuse(issueAt(["grams"], "flag_missing", "--grams, as chips are weighed", null));
    const made = chips ? { ...piece, grams } : piece;
    const body: BodyOf<"oakDose"> = {
      volumeMl: volume,
      ...(area === undefined ? {} : { areaCm2: area }),
      ...(made === undefined ? {} : { piece: made as OakPiece }),
      ...(count === undefined ? {} : { count }),
      ...(grams === undefined || chips ? {} : { grams }),
    };
    const json = await client("oakDose", { body });
    return { json, text: () => printOak(json) };
  },
});
