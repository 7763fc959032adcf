import { besideTheLampSheets } from "./beside-the-lamp.data.ts";
import type { Entry } from "./entry.ts";
import { POURER } from "./household.data.ts";
import { kitchenTableSheets } from "./kitchen-table.data.ts";
import { loudRyeSheets } from "./loud-rye.data.ts";
import { roundDoneSheets } from "./round-done.data.ts";
import { roundOrWickSheets } from "./round-or-wick.data.ts";

export const flights: readonly Entry[] = [
  {
    at: [120, "19:30"],
    does: "taste",
    flight: {
      name: "Is the rye too loud?",
      pourer: POURER,
      glasses: ["wick one", "hearths", "furrow", "simmer"],
      pourMl: 15,
      sheets: loudRyeSheets,
    },
  },
  {
    at: [66, "19:30"],
    does: "taste",
    flight: {
      name: "Beside the Lamp",
      pourer: POURER,
      glasses: ["lamp", "wick two", "wick one", "wick two", "simmer"],
      distractors: ["kettle"],
      target: "lamp",
      pourMl: 15,
      sheets: besideTheLampSheets,
    },
  },
  {
    at: [38, "20:00"],
    does: "taste",
    flight: {
      name: "One at the kitchen table",
      pourer: null,
      glasses: ["ruby", "wall", "vintner", "wharf"],
      pourMl: 15,
      sheets: kitchenTableSheets,
    },
  },
  {
    at: [18, "19:30"],
    does: "taste",
    flight: {
      name: "Round or Wick?",
      pourer: POURER,
      glasses: ["round", "wick two", "lamp", "gull"],
      target: "lamp",
      pourMl: 12,
      sheets: roundOrWickSheets,
    },
  },
  {
    // More than a day before any load, so that whoever loads it may reveal it without the host's token (F11).
    at: [2, "19:30"],
    does: "taste",
    flight: {
      name: "Is the Round done?",
      pourer: POURER,
      glasses: ["kettle", "lamp", "round", "wick two"],
      distractors: ["gull"],
      target: "lamp",
      pourMl: 10,
      sheets: roundDoneSheets,
    },
  },
];
