import type { SheetScript } from "./flight-script.ts";

/** The evening that is not over: two sheets locked, one open, one nobody took. */
export const roundDoneSheets: readonly SheetScript[] = [
  {
    taster: "Ilka",
    until: "locked",
    glasses: [
      {
        glass: "lamp",
        first: ["Orange, leather", "Fig, rye crust, oil", "Salt, long"],
        second: ["Orange", "The best of the four", "Long"],
        score: 88,
        guess: "lamp",
      },
      {
        glass: "round",
        first: ["Clove, cream", "Bread, honey, mint", "Clove, good length"],
        second: ["Cream", "Close to the best one", "Good length"],
        score: 86,
        guess: "round",
      },
      {
        glass: "wick two",
        first: ["Raisin, mint", "Ginger, a bit young", "Pepper"],
        second: ["Raisin", "Young", "Pepper"],
        score: 80,
        guess: "wick two",
      },
      {
        glass: "kettle",
        first: ["Spirit, apple skin", "Hot, toffee, oil", "Heat, some salt?"],
        second: ["Apple", "Water: better", "No salt after all"],
        score: 81,
        guess: "gull",
      },
    ],
    ranking: [["lamp"], ["round"], ["kettle"], ["wick two"]],
  },
  {
    taster: "Jorren",
    until: "open",
    glasses: [
      { glass: "lamp", first: ["Marmalade on a sailing boat", "Chewy, dark", "Goes round twice"] },
      { glass: "round", first: ["Clove rock", "Buttery, sly bit of rye", ""] },
    ],
  },
  { taster: "Pell", until: "free", glasses: [] },
  {
    taster: "Tamsel",
    until: "locked",
    glasses: [
      {
        glass: "lamp",
        first: ["Orange oil, old book", "Fig, crust", "Brine, clove"],
        second: ["Book", "Wide", "Brine, fading sooner than it did"],
        score: 88,
        guess: "round",
      },
      {
        glass: "round",
        first: ["Straw, clove, orange?", "Cream and crust", "Clove, long"],
        second: ["Orange, yes", "If this is ours I am pleased", "Long"],
        score: 89,
        guess: "lamp",
      },
      {
        glass: "wick two",
        first: ["Mint stalk, sultana", "Ginger, narrow", "Pepper"],
        second: ["Sultana", "As ever", "Pepper"],
        score: 79,
        guess: "wick two",
      },
      {
        glass: "kettle",
        first: ["Apple skin, alcohol", "Cream, clove, hot", "Heat, short"],
        second: ["Pear", "Cask strength and not old", "Short"],
        score: 80,
        guess: "kettle",
      },
    ],
    ranking: [["round"], ["lamp"], ["kettle"], ["wick two"]],
  },
];
