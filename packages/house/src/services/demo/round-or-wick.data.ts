import type { SheetScript } from "./flight-script.ts";

/** Two blends, the Lamp, and the last of the closed distillery's pot still. */
export const roundOrWickSheets: readonly SheetScript[] = [
  {
    taster: "Ilka",
    until: "locked",
    glasses: [
      {
        glass: "round",
        first: ["Cream, clove, a little honey", "Even. Oil, bread, mint underneath", "Clove, long for us"],
        second: ["Honey", "Nothing sticks out", "Clove"],
        score: 87,
        guess: "round",
      },
      {
        glass: "wick two",
        first: ["Orange? Raisin", "Ginger, fig", "Pepper, dry"],
        second: ["Raisin", "Less than I hoped", "Dry"],
        score: 80,
        guess: "lamp",
      },
      {
        glass: "lamp",
        first: ["Leather, raisin", "Rye bread, fig", "Long, a little bitter"],
        second: ["Orange comes late", "Very good", "Long"],
        score: 86,
        guess: "wick two",
      },
      {
        glass: "gull",
        first: ["Toffee, wax, strong", "Salted toffee, pear", "Brine, heat"],
        second: ["Pear", "Water helps", "Brine"],
        score: 84,
        guess: "gull",
      },
    ],
    ranking: [["round"], ["lamp"], ["gull"], ["wick two"]],
  },
  {
    taster: "Jorren",
    until: "locked",
    glasses: [
      {
        glass: "round",
        first: [
          "Buttered toast with a clove stuck in it",
          "Cereal milk, then rye walks in",
          "Toast, again toast",
        ],
        second: ["Butter", "Our Wick and Rye has come on", "Toast"],
        score: 85,
        guess: "wick two",
      },
      {
        glass: "wick two",
        first: ["Mint and raisins, a school lunch", "Ginger beer", "Peppery, thin ice"],
        second: ["School lunch", "Bit of wheat in there, soft", "Thin"],
        score: 78,
        guess: "round",
      },
      {
        glass: "lamp",
        first: ["Boat varnish, orange", "Big, dark, chewy", "Salt on the lip for a minute"],
        second: ["Varnish", "Straight pot still and no messing", "Salt"],
        score: 91,
        guess: "gull",
      },
      {
        glass: "gull",
        first: ["Toffee apple at the fair", "Hot toffee, then pears", "Sea spray"],
        second: ["The fair has moved on", "So this is the Lamp tonight", "Spray"],
        score: 85,
        guess: "lamp",
      },
    ],
    ranking: [["lamp"], ["round", "gull"], ["wick two"]],
  },
  {
    taster: "Pell",
    until: "locked",
    glasses: [
      {
        glass: "round",
        first: ["Honey, bread", "Really easy, no burn", "Cloves like an apple tart"],
        second: ["Honey", "Still my favourite", "Tart"],
        score: 90,
        guess: "gull",
      },
      {
        glass: "wick two",
        first: ["Raisins", "Fine. Spicy", "Short"],
        second: ["Raisins", "Fine", "Peppery"],
        score: 75,
        guess: "round",
      },
      {
        glass: "lamp",
        first: ["Oranges and polish, I know this!", "Salty sweet", "Lasts"],
        second: ["Oranges", "Less big than I remembered", "Lasts"],
        score: 85,
        guess: "lamp",
      },
      {
        glass: "gull",
        first: ["Alcohol", "Too strong for me", "Burns, then toffee"],
        second: ["Toffee with water", "Better with a lot of water", "Salt"],
        score: 70,
        guess: "wick two",
      },
    ],
    ranking: [["round"], ["lamp"], ["wick two"], ["gull"]],
  },
  {
    taster: "Tamsel",
    until: "locked",
    glasses: [
      {
        glass: "round",
        first: ["Warm straw, clove", "Creamy oil, pear late", "Long, faint salt"],
        second: ["Straw", "I keep finding the sea in it", "Salt, I would say"],
        score: 86,
        guess: "gull",
        sure: 70,
      },
      {
        glass: "wick two",
        first: ["Sultana and mint stalk", "The one with no depth", "Pepper"],
        second: ["Mint", "As before", "Pepper"],
        score: 80,
        guess: "wick two",
        sure: 90,
      },
      {
        glass: "lamp",
        first: ["Closed tonight. Book, clove", "Bread and honey, soft", "Clove"],
        second: ["Opens a little: orange", "Softer than our first two", "Shorter than I remember"],
        score: 84,
        guess: "round",
        sure: 50,
      },
      {
        glass: "gull",
        first: ["Rope, brine, salted butter", "Toffee, wax, huge", "Brine that stays"],
        second: ["Rope", "This must be it", "Brine"],
        score: 91,
        guess: "lamp",
        sure: 70,
      },
    ],
    ranking: [["gull"], ["round"], ["lamp"], ["wick two"]],
  },
];
