import { type BodyOf, DiscriminationMethod, MOST_SETS, QuestionId } from "@partsproof/house/protocol";
import { type AtHousehold, findVessel } from "../../door/index.ts";
import { type GivenFlags, one, readText, readWhole, readWord, yes } from "../../flags/index.ts";

/** What a flight is set for and how its glasses are laid out, in the words of the API. */
export const questionFlags = {
  question: one(
    readWord("question", QuestionId.options),
    "<question>",
    `which_is_which unless given: ${QuestionId.options.join(", ")}`,
  ),
  method: one(
    readWord("method", DiscriminationMethod.options),
    "<method>",
    `tell_apart and changed: ${DiscriminationMethod.options.join(", ")}`,
  ),
  sets: one(readWhole("sets", 1, MOST_SETS), "<number>", "tell_apart and changed: sets each taster gets"),
  asked: one(readText("asked"), "<word>", 'paired: as in "which of the two is sweeter?": sweeter'),
  expected: one(
    readText("expected"),
    "<vessel>",
    "paired: which of the two has more, said beforehand; sealed with the key",
  ),
  reference: yes("how_close: pour each taster a glass of the target labelled R as well"),
  repeats: one(readWhole("repeats", 0, 3), "<number>", "so many glasses, drawn by the house, a second time"),
  control: one(readText("control"), "<vessel>", "one more glass, of a whiskey that everybody knows"),
  "glasses-each": one(
    readWhole("glasses-each", 2, 12),
    "<number>",
    "like_best and which_is_which: only so many of the glasses for each taster",
  ),
  late: yes("the strong and smoky glasses late, where that costs no balance"),
};

/** Where the house's word for a field stands among the flags. */
export const questionPlaces = {
  expectedVesselId: "expected",
  controlVesselId: "control",
  glassesEach: "glasses-each",
};

/** The part of a draft that the flags tell of. */
export async function typedQuestion(
  flags: GivenFlags<typeof questionFlags>,
  here: AtHousehold,
): Promise<Partial<BodyOf<"addFlight">>> {
  const vessel = async (text: string | undefined, flag: string): Promise<string | null> =>
    text === undefined ? null : (await findVessel(here, text, [flag])).id;
  return {
    ...(flags.question === undefined ? {} : { question: flags.question }),
    method: flags.method ?? null,
    ...(flags.sets === undefined ? {} : { sets: flags.sets }),
    asked: flags.asked ?? null,
    expectedVesselId: await vessel(flags.expected, "expected"),
    reference: flags.reference,
    ...(flags.repeats === undefined ? {} : { repeats: flags.repeats }),
    controlVesselId: await vessel(flags.control, "control"),
    glassesEach: flags["glasses-each"] ?? null,
    late: flags.late,
  };
}
