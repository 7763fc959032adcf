import { printSheet } from "../../print/flight.ts";
import { householdCommand } from "../command.ts";
import { typedSheet, sheetFlags } from "./typed-sheet.ts";
import { tokenFlag, withToken } from "./token-flag.ts";
import { tasterFlag, whichSheet } from "./which-sheet.ts";

export const flightSheetShow = householdCommand({
  name: "flight sheet show",
  says: "One sheet. Before the reveal only with its own token.",
  args: { flight: "id or name" },
  flags: { ...tasterFlag, ...tokenFlag("the taster's") },
  example: 'flight sheet show "Sunday, blind" --taster Ilka',
  run: async ({ args, flags }, here) => {
    const { at } = await whichSheet(here, args.flight, flags.taster);
    const sheet = await here.client("getSheet", { at, ...withToken(flags.token) });
    return { json: sheet, text: () => printSheet(sheet) };
  },
});

export const flightSheetEdit = householdCommand({
  name: "flight sheet edit",
  says: "Notes, scores, how strong, and what the question asks: guesses, a ranking, answers to sets. What is not given stays as it is.",
  args: { flight: "id or name" },
  flags: { ...sheetFlags, ...tasterFlag, ...tokenFlag("the taster's") },
  example:
    'flight sheet edit "Sunday, blind" --taster Ilka --nose 417="salt, pear" --score 417=80 --guess 417="Blending bottle 1" --rank "417 > 233"',
  places: { guesses: "guess", ranking: "rank", answers: "pick", strengths: "strong" },
  run: async ({ args, flags }, here) => {
    const { at } = await whichSheet(here, args.flight, flags.taster);
    const token = withToken(flags.token);
    const before = await here.client("getSheet", { at, ...token });
    const sheet = await here.client("editSheet", { at, body: typedSheet(flags, before), ...token });
    return { json: sheet, text: () => printSheet(sheet) };
  },
});

export const flightLock = householdCommand({
  name: "flight lock",
  says: "Lock a sheet. Nothing on it changes any more.",
  args: { flight: "id or name" },
  flags: { ...tasterFlag, ...tokenFlag("the taster's") },
  example: 'flight lock "Sunday, blind" --taster Ilka',
  run: async ({ args, flags }, here) => {
    const { at } = await whichSheet(here, args.flight, flags.taster);
    const token = withToken(flags.token);
    const { version } = await here.client("getSheet", { at, ...token });
    const sheet = await here.client("lockSheet", { at, body: { version }, ...token });
    return { json: sheet, text: () => printSheet(sheet) };
  },
});
