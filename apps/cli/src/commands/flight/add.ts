import type { FlightMade } from "@partsproof/house/protocol";
import { findName, findTaster, findVessel } from "../../door/index.ts";
import { issueAt, many, needed, one, readText, readVolume, refuse, some, yes } from "../../flags/index.ts";
import { careful, printFlight } from "../../print/flight.ts";
import { householdCommand } from "../command.ts";
import { questionFlags, questionPlaces, typedQuestion } from "./question-flags.ts";

export const flightAdd = householdCommand({
  name: "flight add",
  says: "Set a flight for a question: the house draws codes and orders and seals the key. Prints the tokens, this once.",
  flags: {
    name: needed(readText("name"), "<name>", "what it is called"),
    ...questionFlags,
    glass: some(readText("glass"), "<vessel>", "again for each glass: id or label; twice for a repeat"),
    pour: needed(readVolume, "<volume>", "into each glass of each taster, 1 to 60 ml"),
    taster: some(readText("taster"), "<taster>", "again for each: id or name"),
    pourer: one(readText("pourer"), "<name>", "who pours and does not taste"),
    alone: yes("instead of --pourer: one taster who pours, with marks on the undersides"),
    distractor: many(readText("distractor"), "<name>", "again for each name on offer that is in no glass"),
    target: one(
      readText("target"),
      "<name>",
      "what the blends try to come close to: whiskey, batch or vessel",
    ),
  },
  example:
    'flight add --name "Sunday, blind" --glass "Blending bottle 1" --glass "Saltreach Lamplighter\'s Rest" --pour 15ml --taster Ilka --taster Jorren --pourer Wynna',
  places: {
    ...questionPlaces,
    glasses: "glass",
    distractors: "distractor",
    targetNameId: "target",
    pourMl: "pour",
    tasterIds: "taster",
    pouring: "alone",
  },
  run: async ({ flags }, here) => {
    if (flags.alone && flags.pourer !== undefined) {
      refuse(issueAt(["pourer"], "flags_exclude", "no --alone beside it", flags.pourer));
    }
    const glasses: { vesselId: string }[] = [];
    for (const [index, text] of flags.glass.entries()) {
      glasses.push({ vesselId: (await findVessel(here, text, ["glass", index])).id });
    }
    const tasterIds: string[] = [];
    for (const [index, text] of flags.taster.entries()) {
      tasterIds.push((await findTaster(here, text, ["taster", index])).id);
    }
    const distractors: string[] = [];
    for (const [index, text] of flags.distractor.entries()) {
      distractors.push(await findName(here, text, ["distractor", index]));
    }
    const made = await here.client("addFlight", {
      at: { household: here.household.id },
      body: {
        name: flags.name,
        ...(await typedQuestion(flags, here)),
        pouring: flags.alone ? "alone" : "someone else",
        glasses,
        distractors,
        targetNameId: flags.target === undefined ? null : await findName(here, flags.target, ["target"]),
        pourMl: flags.pour,
        tasterIds,
        pourer: flags.pourer ?? null,
      },
    });
    return { json: made, text: () => printMade(made), notes: [careful] };
  },
});

const printMade = ({ flight, hostToken, pourerToken }: FlightMade): string =>
  [
    printFlight(flight),
    "",
    ...flight.design.said,
    "",
    "These tokens are shown this once; the house cannot give them again.",
    `Host's token    ${hostToken}`,
    ...(pourerToken === null
      ? []
      : [
          `Pourer's token  ${pourerToken}`,
          "Give it to the pourer and to no taster: it opens the pour list.",
        ]),
  ].join("\n");
