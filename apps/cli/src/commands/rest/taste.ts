import { findTaster } from "../../door/index.ts";
import { many, one, readAttributeLevel, readText } from "../../flags/index.ts";
import { printAdvice } from "../../print/rested.ts";
import { householdCommand } from "../command.ts";
import { batchArg, dayFlag, findRest, momentOn } from "./of-batch.ts";

const note = (sense: string) => one(readText(sense), "<text>", `what the ${sense} says, in your own words`);

export const restTaste = householdCommand({
  name: "rest taste",
  says: "A check tasting of a batch that rests: words are read as on any sheet. Then what to believe.",
  args: batchArg,
  flags: {
    nose: note("nose"),
    palate: note("palate"),
    finish: note("finish"),
    strength: many(readAttributeLevel, "<attribute>=<level>", "of the whole glass, 0 to 10: wood.toasted=4"),
    taster: one(readText("taster"), "<taster>", "who tasted, by id or name"),
    on: dayFlag,
  },
  example: 'rest taste "First try" --nose "vanilla, a little toasted oak" --strength wood.toasted=4',
  places: { tasterId: "taster", strengths: "strength", at: "on", notes: "nose" },
  run: async ({ args, flags }, here) => {
    const rest = await findRest(here, args.batch);
    const { nose, palate, finish, strength, taster } = flags;
    const tasterId = taster === undefined ? null : (await findTaster(here, taster, ["taster"])).id;
    const at = { household: here.household.id, rest: rest.id };
    const told = await here.client("addCheck", {
      at,
      body: {
        tasterId,
        notes: {
          ...(nose === undefined ? {} : { nose }),
          ...(palate === undefined ? {} : { palate }),
          ...(finish === undefined ? {} : { finish }),
        },
        strengths: strength.map(([attribute, value]) => ({ section: "whole", attribute, strength: value })),
        ...momentOn(flags.on),
      },
    });
    const advice = await here.client("adviseRest", { at });
    return { json: { rest: told, advice }, text: () => printAdvice(told, advice) };
  },
});
