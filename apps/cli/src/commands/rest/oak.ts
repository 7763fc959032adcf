import { type BodyOf, type OakPiece, WoodSpecies } from "@partsproof/house/protocol";
import {
  issueAt,
  one,
  readArea,
  readMass,
  readPiece,
  readText,
  readWhole,
  readWord,
  refuse,
} from "../../flags/index.ts";
import { printRested } from "../../print/rested.ts";
import { householdCommand } from "../command.ts";
import { batchArg, dayFlag, findRest, momentOn } from "./of-batch.ts";

export const restOak = householdCommand({
  name: "rest oak",
  says: "Put wood into a batch that rests: untreated food-grade oak only, in glass that is no lead crystal.",
  args: batchArg,
  flags: {
    piece: one(
      readPiece,
      "<shape>=<lengths>",
      "stick, stave, chips or cube=10x10x160mm; spiral=25x10x3x8x100mm",
    ),
    area: one(readArea, "<area>", "instead: its contact area, such as 66cm2"),
    count: one(readWhole("count", 1, 1000), "<number>", "how many of the piece, 1 where left out"),
    grams: one(readMass, "<mass>", "what the wood weighs"),
    species: one(readWord("species", WoodSpecies.options), "<species>", "American oak, European oak, …"),
    toast: one(readText("toast"), "<words>", "as its seller says it"),
    use: one(readWhole("use", 1, 5), "<number>", "1 for new wood, 2 for its second use"),
    on: dayFlag,
  },
  example:
    'rest oak "First try" --piece stick=10x10x160mm --grams 10.9 --species "American oak" --toast medium',
  places: { areaCm2: "area", at: "on" },
  run: async ({ args, flags }, here) => {
    const { piece, area, count, grams, species, toast, use } = flags;
    const chips = piece?.shape === "chips";
    if (chips && grams === undefined)
      refuse(issueAt(["grams"], "flag_missing", "--grams, as chips are weighed", null));
    const rest = await findRest(here, args.batch);
    const body: BodyOf<"putOakIn"> = {
      ...(area === undefined ? {} : { areaCm2: area }),
      ...(piece === undefined ? {} : { piece: (chips ? { ...piece, grams } : piece) as OakPiece }),
      ...(count === undefined ? {} : { count }),
      ...(grams === undefined || chips ? {} : { grams }),
      ...(species === undefined ? {} : { species }),
      ...(toast === undefined ? {} : { toast }),
      ...(use === undefined ? {} : { use }),
      ...momentOn(flags.on),
    };
    const json = await here.client("putOakIn", { at: { household: here.household.id, rest: rest.id }, body });
    return { json, text: () => printRested(json, null) };
  },
});
