import type { BodyOf, NextFlightAnswer } from "@partsproof/house/protocol";
import { findRecipe } from "../../door/index.ts";
import { readJsonFile } from "../../files/index.ts";
import { one, readText } from "../../flags/index.ts";
import { printNext } from "../../print/household.ts";
import { printNextFlight } from "../../print/next-flight.ts";
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
  };
}

export const next = fileCommand({
  name: "next",
  says: "What is next: what has rested, open sheets, flights that wait. With a file or a recipe, what to pour next and why.",
  flags: {
    file: one(readText("file"), "<file>", "what was tried and how it was ranked, as JSON: docs/next.md"),
    recipe: one(readText("recipe"), "<id or name>", "a recipe of the household: what to pour next around it"),
  },
  example: "next --file saltreach-history.json",
  run: async ({ file, recipe }, { client, at }) => {
    if (file !== undefined) {
      // Not read by us: the house's schema says what is wrong with it, field by field.
      const body = (await readJsonFile(file, ["file"])) as NonNullable<BodyOf<"nextFlight">>;
      const flight = await client("nextFlight", { body });
      return { json: flight, text: () => printNextFlight(flight) };
    }
    const here = await at();
    if (recipe !== undefined) {
      const { id } = await findRecipe(here, recipe, ["recipe"]);
      const { asked, names, notes } = await here.client("getTried", {
        at: { household: here.household.id, recipe: id },
      });
      const flight = await here.client("nextFlight", { body: asked });
      return { json: flight, text: () => printNextFlight(called(flight, names)), notes };
    }
    const answer = await here.client("next", { at: { household: here.household.id } });
    return { json: answer, text: () => printNext(answer.items) };
  },
});
