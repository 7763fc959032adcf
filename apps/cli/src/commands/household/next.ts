import {
  type BodyOf,
  meantGlasses,
  type NextFlightAnswer,
  plannedTrials,
  type TriedHistory,
} from "@partsproof/house/protocol";
import { findRecipe } from "../../door/index.ts";
import { pick } from "../../door/pick.ts";
import { readJsonFile } from "../../files/index.ts";
import {
  type GlassParts,
  issueAt,
  many,
  one,
  readGlassParts,
  readText,
  refuse,
  yes,
} from "../../flags/index.ts";
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
    lacks: flight.lacks.map((lack) => ({ ...lack, id: nameOf(lack.id) })),
  };
}

const insteadCalled = (own: Instead, names: Readonly<Record<string, string>>): Instead =>
  own.map(({ glass, parts }) => ({
    glass,
    parts: parts && Object.fromEntries(Object.entries(parts).map(([id, part]) => [names[id] ?? id, part])),
  }));

type Instead = NonNullable<NonNullable<BodyOf<"nextFlight">>["instead"]>;

/** What was typed of glasses, its whiskeys by what they are called. */
const insteadOf = (typed: readonly GlassParts[], idOf: (of: string, at: number) => string): Instead =>
  typed.map(({ glass, parts }, at) => ({
    glass,
    parts: parts && Object.fromEntries(parts.map(({ of, count }) => [idOf(of, at), count])),
  }));

const itemOf = ({ asked, names }: TriedHistory) => {
  const items = asked.items.map(({ id }) => ({ id, names: [names[id] ?? id] as [string] }));
  return (of: string, at: number): string => pick("whiskey", of, items, ["instead", at]).id;
};

/** As given, and nothing of it where nothing was typed. */
const beside = (instead: Instead) => (instead.length === 0 ? {} : { instead });

export const next = fileCommand({
  name: "next",
  says: "What is next: what has rested, open sheets, flights that wait. With a file or a recipe, what to pour next and why.",
  flags: {
    file: one(readText("file"), "<file>", "what was tried and how it was ranked, as JSON: docs/next.md"),
    recipe: one(readText("recipe"), "<id or name>", "a recipe of the household: what to pour next around it"),
    instead: many(
      readGlassParts,
      "<glass>=<parts>",
      "your own in the place of a glass, such as 3=2 Barn Door, 1 Sweet Sack, or none to leave it out; says what then lacks",
    ),
    plan: yes(
      "with a recipe: keep its mixes as bench trials, planned as a flight with why each glass is there",
    ),
  },
  example: "next --file saltreach-history.json",
  run: async ({ file, recipe, instead: typed, plan }, { client, at }) => {
    if (file !== undefined) {
      // Not read by us: the house's schema says what is wrong with it, field by field.
      const read = (await readJsonFile(file, ["file"])) as NonNullable<BodyOf<"nextFlight">>;
      const own = insteadOf(typed, (of) => of);
      const flight = await client("nextFlight", { body: { ...read, ...beside(own) } });
      return { json: flight, text: () => printNextFlight(flight, own) };
    }
    if (recipe === undefined && (plan || typed.length > 0))
      refuse(issueAt([plan ? "plan" : "instead"], "flag_missing", "--recipe <id or name> beside it", null));
    const here = await at();
    if (recipe !== undefined) {
      const { id, name } = await findRecipe(here, recipe, ["recipe"]);
      const history = await here.client("getTried", { at: { household: here.household.id, recipe: id } });
      const { asked, names, notes } = history;
      const own = insteadOf(typed, itemOf(history));
      const flight = await here.client("nextFlight", { body: { ...asked, ...beside(own) } });
      if (plan) {
        const body = plannedTrials(history, name, meantGlasses(flight.glasses, own));
        if (body.mixes?.length === 0)
          refuse(
            issueAt(["plan"], "nothing_to_mix", "a glass that is not on the shelf as it is: flight add", 0),
          );
        const set = await here.client("addTrialSet", { at: { household: here.household.id }, body });
        return { json: set, text: () => printTrialSet(set), notes };
      }
      return {
        json: flight,
        text: () => printNextFlight(called(flight, names), insteadCalled(own, names)),
        notes,
      };
    }
    const answer = await here.client("next", { at: { household: here.household.id } });
    return { json: answer, text: () => printNext(answer.items) };
  },
});
