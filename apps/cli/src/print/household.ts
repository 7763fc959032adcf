import type { Household, NextThing, Taster } from "@partsproof/house/protocol";
import { columns } from "./columns.ts";
import { facts } from "./facts.ts";
import { day, instant } from "./figures.ts";

export const printHouseholds = (households: readonly Household[], says: string): string =>
  `${says}\n${columns(
    households,
    [
      { head: "Household", cell: ({ name }) => name },
      { head: "Currency", cell: ({ currency }) => currency },
      { head: "Since", cell: ({ createdAt }) => day(createdAt) },
      { head: "", cell: ({ demo }) => (demo ? "invented, for trying out" : "") },
      { head: "Id", cell: ({ id }) => id },
    ],
    'No household yet. Begin one: household add "<name>". Or load the invented one: demo load',
  )}`;

export const printHousehold = (household: Household): string =>
  facts([
    ["Household", household.name],
    ["Currency", household.currency],
    ["Since", instant(household.createdAt)],
    ["Demo", household.demo ? "yes: everything in it is invented" : null],
    ["Id", household.id],
  ]);

export const printTasters = (tasters: readonly Taster[]): string =>
  columns(
    tasters,
    [
      { head: "Taster", cell: ({ name }) => name },
      { head: "Id", cell: ({ id }) => id },
    ],
    'Nobody tastes here yet: taster add "<name>"',
  );

export const printNext = (things: readonly NextThing[]): string =>
  columns(
    things,
    [
      { head: "What", cell: ({ kind }) => kind },
      { head: "When", cell: ({ at }) => day(at) },
      { head: "Next", cell: ({ text }) => text },
      { head: "Id", cell: ({ subject }) => subject.id ?? "" },
    ],
    "Nothing waits for you.",
  );
