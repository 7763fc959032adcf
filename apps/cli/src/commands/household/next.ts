import { type BodyOf, type NextFlightAnswer, plannedTrials } from "@partsproof/house/protocol";
import { findRecipe } from "../../door/index.ts";
import { readJsonFile } from "../../files/index.ts";
import { issueAt, one, readText, refuse, yes } from "../../flags/index.ts";
import { printNext } from "../../print/household.ts";
import { printNextFlight } from "../../print/next-flight.ts";
import { printTrialSet } from "../../print/trial-set.ts";
import { fileCommand } from "../command.ts";

/** Whiskeys and what was tried by what they are called. */
function called(flight: NextFlightAnswer, names: Readonly<Record<string, string>>): NextFlightAnswer {
  const nameOf = (id: string): string => names[id] ?? id;
  return {
    ...flight,
    glasses: flight.glasses.map(({ parts, why, ...rest }) => ({
      ...rest,
      parts: Object.fromEntries(Object.entries(parts).map(([id, part]) => [nameOf(id), part])),
      why: why.replace(/[0-9a-z]{26}/g, nameOf),
    })),
    posterior: flight.posterior.map((one) => ({ ...one, id: nameOf(one.id) })),
    scarce: flight.scarce.map(nameOf),
  };
}

export const next = fileCommand({
  name: "next",
  says: "What is next: what has rested, open sheets, flights that wait. With a file or a recipe, what to pour next and why.",
  flags: {
    file: one(readText("file"), "<file>", "what was tried and how it was ranked, as JSON: docs/next.md"),
    recipe: one(readText("recipe"), "<id or name>", "a recipe of the household: what to pour next around it"),
    plan: yes(
      "with a recipe: keep its mixes as bench trials, planned as a flight with why each glass is there",
    ),
  },
  example: "next --file saltreach-history.json",
  run: async ({ file, recipe, plan }, { client, at }) => {
    if (file !== undefined) {
      // Not read by us: the house's schema says what is wrong with it, field by field.
      const body = (await readJsonFile(file, ["file"])) as NonNullable<BodyOf<"nextFlight">>;
      const flight = await client("nextFlight", { body });
      return { json: flight, text: () => printNextFlight(flight) };
    }
    if (plan && recipe === undefined)
      refuse(issueAt(["plan"], "flag_missing", "--recipe <id or name> beside it", null));
    const here = await at();
    if (recipe !== undefined) {
      const { id, name } = await findRecipe(here, recipe, ["recipe"]);
      const history = await here.client("getTried", { at: { household: here.household.id, recipe: id } });
      const { asked, names, notes } = history;
      const flight = await here.client("nextFlight", { body: asked });
      if (plan) {
        const body = plannedTrials(history, name, flight.glasses);
        if (body.mixes?.length === 0)
          refuse(
            issueAt(["plan"], "nothing_to_mix", "a glass that is not on the shelf as it is: flight add", 0),
          );
        const set = await here.client("addTrialSet", { at: { household: here.household.id }, body });
        return { json: set, text: () => printTrialSet(set), notes };
      }
      return { json: flight, text: () => printNextFlight(called(flight, names)), notes };
    }
    const answer = await here.client("next", { at: { household: here.household.id } });
    return { json: answer, text: () => printNext(answer.items) };
  },
});
