import type { Entry } from "./entry.ts";

/** Four batches, with what was really poured rather than what was planned. */
export const batches: readonly Entry[] = [
  {
    at: [150, "20:00"],
    does: "make",
    batch: "wick one",
    name: "Wick and Rye, first make",
    recipe: "wick",
    bottle: { label: "Amber bottle 1", capacityMl: 500 },
    pours: [
      ["hearths", 242],
      ["furrow", 80],
    ],
    note: "Two millilitres over on the Hearths.",
  },
  {
    at: [58, "19:30"],
    does: "remark",
    finished: true,
    batch: "wick one",
    note: "Last of the five beside the Lamp. The rest went into the odd-ends bottle.",
  },
  {
    at: [96, "20:00"],
    does: "make",
    batch: "wick two",
    name: "Wick and Rye, with malt",
    recipe: "wick",
    bottle: { label: "Amber bottle 2", capacityMl: 500 },
    pours: [
      ["hearths", 276],
      ["furrow", 110],
      ["wall", 55],
    ],
    note: "A part is 55 mL.",
  },
  {
    at: [64, "18:30"],
    does: "remark",
    finished: true,
    batch: "wick two",
    note: "Next after the Lamp itself, beside it. Keep these parts.",
  },
  {
    at: [52, "20:00"],
    does: "make",
    batch: "round",
    name: "Keeper's Round, without the stair",
    recipe: "round",
    bottle: { label: "Amber bottle 3", capacityMl: 500 },
    pours: [
      ["kettle", 180],
      ["barn", 60],
      ["sack", 61],
      ["tap", 64],
    ],
    note: "Tap water, boiled and cooled.",
  },
  {
    at: [16, "20:00"],
    does: "make",
    batch: "watch",
    name: "Second Watch",
    recipe: "watch",
    bottle: { label: "Small amber bottle", capacityMl: 250 },
    pours: [
      ["wick two", 180],
      ["fore deck", 45],
    ],
    note: "Stick in on the same evening.",
  },
  {
    at: [16, "20:20"],
    does: "lay",
    batch: "watch",
    wood: {
      piece: { shape: "stick", cm: [0.5, 0.5, 6] },
      species: "American oak",
      toast: "medium toast",
    },
    pull: { attribute: "wood.toasted", level: 5 },
  },
  {
    at: [9, "20:10"],
    does: "pour",
    from: "watch",
    to: "glass",
    ml: 3,
    note: "Day 7, off a teaspoon.",
  },
  {
    at: [9, "20:12"],
    does: "check",
    batch: "watch",
    palate: "Vanilla already, a little toasted oak.",
    strengths: [
      ["wood.toasted", 2],
      ["sweet.vanilla", 4],
    ],
  },
  { at: [9, "20:15"], does: "remark", batch: "watch", note: "Day 7: vanilla already. Leave the stick in." },
];
