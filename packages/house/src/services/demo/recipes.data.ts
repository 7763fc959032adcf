import type { Entry } from "./entry.ts";
import { abv, proof } from "./whiskey-facts.ts";

/** Five recipes, and why each of them changed. */
export const recipes: readonly Entry[] = [
  {
    at: [189, "19:00"],
    does: "write",
    recipe: "wick",
    name: "Wick and Rye",
    target: "lamplighters rest",
    body: {
      parts: [
        ["three hearths", 2],
        ["straight furrow", 1],
      ],
      restDays: 14,
      note: "First guess. The Lamp's label said pot still and rye and nothing more.",
    },
  },
  {
    at: [152, "19:00"],
    does: "rewrite",
    recipe: "wick",
    body: {
      parts: [
        ["three hearths", 3],
        ["straight furrow", 1],
      ],
      restDays: 21,
      note: "Two to one was all rye on the bench. A part more pot still, a week more rest.",
    },
  },
  {
    at: [97, "19:00"],
    does: "rewrite",
    recipe: "wick",
    body: {
      parts: [
        ["three hearths", 5],
        ["straight furrow", 2],
        ["harbour wall", 1],
      ],
      restDays: 28,
      note: "The first make was liked but thin in the middle. One part of malt from fortified-wine oak for the dried fruit.",
    },
  },
  {
    at: [60, "19:00"],
    does: "rewrite",
    recipe: "wick",
    body: {
      parts: [
        ["long simmer", 5],
        ["straight furrow", 2],
        ["harbour wall", 1],
      ],
      restDays: 28,
      note: "Beside the Lamp it tasted young. The same parts with the twelve-year-old pot still. Dearer; not made yet.",
    },
  },

  {
    at: [177, "19:00"],
    does: "write",
    recipe: "round",
    name: "Keeper's Round",
    target: "lamplighters rest",
    body: {
      parts: [
        ["gull stair", 2],
        ["barn door", 1],
        ["sweet sack", 1],
      ],
      restDays: 30,
      note: "Start from the closed stills themselves: Gull Stair is the Lamp without its rye.",
    },
  },
  {
    at: [141, "19:00"],
    does: "rewrite",
    recipe: "round",
    body: {
      parts: [
        ["full kettle", 2],
        ["barn door", 1],
        ["sweet sack", 1],
      ],
      waterTo: abv(46.8),
      restDays: 30,
      note: "Gull Stair can't be bought any more, and what is left is for tasting against. Full Kettle is cask-strength pot still as well. Water to the Lamp's own strength.",
    },
  },
  {
    at: [55, "19:00"],
    does: "rewrite",
    recipe: "round",
    body: {
      parts: [
        ["full kettle", 3],
        ["barn door", 1],
        ["sweet sack", 1],
      ],
      waterTo: abv(46.8),
      restDays: 30,
      note: "Still peppery at two to one to one. A part more pot still; Bench E was right.",
    },
  },

  {
    at: [160, "18:00"],
    does: "write",
    recipe: "sweet",
    name: "Harbour Sweet",
    body: {
      parts: [
        ["wheatside", 2],
        ["sugar wharf", 1],
      ],
      restDays: 7,
      note: "After no bottle in particular. For people who say they don't like whiskey.",
    },
  },
  {
    at: [83, "18:00"],
    does: "rewrite",
    recipe: "sweet",
    body: {
      parts: [
        ["wheatside", 3],
        ["sugar wharf", 1],
        ["crib corn", 1],
      ],
      waterTo: proof(92),
      restDays: 7,
      note: "All banana before. Less rum cask, some corn, and a little water.",
    },
  },

  {
    at: [63, "19:00"],
    does: "write",
    recipe: "watch",
    name: "Second Watch",
    target: "lamplighters rest",
    body: {
      parts: [
        ["wick two", 2],
        ["fore deck", 1],
      ],
      restDays: 42,
      note: "The blend we have, with old fortified-wine oak on top. Fore Deck is eighteen.",
    },
  },
  {
    at: [17, "19:00"],
    does: "rewrite",
    recipe: "watch",
    body: {
      parts: [
        ["wick two", 4],
        ["fore deck", 1],
      ],
      restDays: 42,
      oak: "One stick of untreated food-grade American oak, medium toast, 5 × 5 × 60 mm. Taste on days 7, 14 and 21; pull it when it starts to talk.",
      note: "Two to one in a glass was nothing but Fore Deck. Four to one, and a small stick.",
    },
  },

  {
    at: [112, "18:00"],
    does: "write",
    recipe: "stove",
    name: "Winter Stove",
    body: {
      parts: [
        ["smoke loft", 1],
        ["harbour wall", 2],
        ["field wheat", 1],
      ],
      note: "Something with smoke for after the dishes.",
    },
  },
  {
    at: [90, "18:00"],
    does: "rewrite",
    recipe: "stove",
    body: {
      parts: [
        ["smoke loft", 1],
        ["harbour wall", 4],
        ["field wheat", 2],
      ],
      note: "One part in four was an ashtray. One in seven.",
    },
  },
  {
    at: [32, "18:00"],
    does: "rewrite",
    recipe: "stove",
    body: {
      parts: [
        ["smoke loft", 1],
        ["harbour wall", 4],
        ["ruby hour", 1],
      ],
      restDays: 14,
      note: "The wheat did nothing. Try Ruby Hour for a bit of cherry. In a vial; not judged yet.",
    },
  },
];
