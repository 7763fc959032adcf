import { findVessel, findWhiskey } from "../../door/index.ts";
import { issueAt, many, one, readText, readVolume, readWhole, refuse } from "../../flags/index.ts";
import { printKeptUp, printNextAddition } from "../../print/kept-up.ts";
import { householdCommand } from "../command.ts";
import { readAimedAttribute } from "./read-aimed.ts";

export const shelfKeptUp = householdCommand({
  name: "shelf kept-up",
  says: "A bottle that is poured from and topped up: what is left of each addition, its half-life, what it was over time.",
  args: { vessel: "id or label" },
  flags: {
    points: one(readWhole("points", 2, 2000), "<number>", "of its course in --json, 400 where left out"),
  },
  example: 'shelf kept-up "Blending bottle 1"',
  run: async ({ args, flags }, here) => {
    const { id } = await findVessel(here, args.vessel, ["vessel"]);
    const json = await here.client("getKeptUp", {
      at: { household: here.household.id, vessel: id },
      query: flags.points === undefined ? {} : { points: flags.points },
    });
    return { json, text: () => printKeptUp(json) };
  },
});

export const shelfNext = householdCommand({
  name: "shelf next",
  says: "What to add next to a topped-up bottle, from the shelf, so that it comes closest to a target. Nothing is moved.",
  args: { vessel: "id or label" },
  flags: {
    like: one(readText("like"), "<whiskey>", "stay near this whiskey, by what was said of it: id or name"),
    aim: many(readAimedAttribute, "<attribute>=<0 to 10>", "instead, or besides: sweet.honey=6"),
    amount: one(readVolume, "<volume>", "how much to add; all the room there is where left out"),
    bottles: one(readWhole("bottles", 1, 4), "<number>", "of so many whiskeys at most, 2 where left out"),
    parts: one(readWhole("parts", 1, 12), "<number>", "in so many parts at most, 6 where left out"),
    top: one(readWhole("top", 1, 20), "<number>", "so many answers, 5 where left out"),
  },
  example: 'shelf next "Blending bottle 1" --aim sweet.honey=6 --aim spice.pepper=3 --amount 100ml',
  places: { addMl: "amount", maxBottles: "bottles", maxParts: "parts", profile: "aim" },
  run: async ({ args, flags }, here) => {
    const { like, aim, amount, bottles, parts, top } = flags;
    if (like === undefined && aim.length === 0)
      refuse(issueAt(["like"], "flag_missing", "--like <whiskey> or --aim <attribute>=<0 to 10>", null));
    const { id } = await findVessel(here, args.vessel, ["vessel"]);
    const whiskey = like === undefined ? null : await findWhiskey(here, like, ["like"]);
    const json = await here.client("nextAddition", {
      at: { household: here.household.id, vessel: id },
      body: {
        ...(whiskey === null ? {} : { like: whiskey.id }),
        ...(aim.length === 0 ? {} : { profile: Object.fromEntries(aim) }),
        ...(amount === undefined ? {} : { addMl: amount }),
        ...(bottles === undefined ? {} : { maxBottles: bottles }),
        ...(parts === undefined ? {} : { maxParts: parts }),
        ...(top === undefined ? {} : { top }),
      },
    });
    return { json, text: () => printNextAddition(json) };
  },
});
