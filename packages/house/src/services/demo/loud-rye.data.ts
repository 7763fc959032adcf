import type { SheetScript } from "./flight-script.ts";

/** The first evening: the first make beside what went into it, and the older pot still. */
export const loudRyeSheets: readonly SheetScript[] = [
  {
    taster: "Ilka",
    until: "locked",
    glasses: [
      {
        glass: "wick one",
        first: ["Apple peel, a little mint", "Ginger biscuit, oily", "Pepper, then clean"],
        second: ["Mint gone, more apple", "Thin in the middle", "Short but tidy"],
        score: 81,
        guess: "wick one",
      },
      {
        glass: "hearths",
        first: ["Green apple, wet grain", "Barley sugar, oil", "Drying, tea leaf"],
        second: ["Raw dough", "Sweeter than I thought", "Same tea leaf"],
        score: 76,
        guess: "simmer",
      },
      {
        glass: "furrow",
        first: ["Dill. Unmistakable", "Hot. Pepper, sawdust", "Bitter pith"],
        second: ["Still dill", "With water: caraway, better", "Bitter"],
        score: 70,
        guess: "furrow",
      },
      {
        glass: "simmer",
        first: ["Apple tart, wax", "Soft, biscuit, nutmeg", "Vanilla, medium"],
        second: ["Candle", "A bit sleepy", "Medium"],
        score: 79,
        guess: "hearths",
      },
    ],
    ranking: [["wick one"], ["simmer"], ["hearths"], ["furrow"]],
  },
  {
    taster: "Jorren",
    until: "locked",
    glasses: [
      {
        glass: "wick one",
        first: [
          "Orchard after rain",
          "Like the crust of a rye loaf with honey on it",
          "Goes on like a good story",
        ],
        second: ["Pear drops now", "Honey has left the table", "Still telling the story"],
        score: 84,
        guess: "hearths",
      },
      {
        glass: "hearths",
        first: ["Cut grass and a bicycle chain", "Oily! Proper pot still, the older one", "Warm cardboard"],
        second: ["Chain oil, in a nice way", "Pears in syrup", "Cardboard gone, nuts instead"],
        score: 78,
        guess: "simmer",
      },
      {
        glass: "furrow",
        first: ["Pickle jar and toothpaste", "A brass band", "Burnt toast, cloves, more band"],
        second: ["Mint humbugs", "I like this far too much", "Toast"],
        score: 90,
        guess: "furrow",
      },
      {
        glass: "simmer",
        first: ["Grandmother's wardrobe, polish", "Apple crumble, no custard", "Polite"],
        second: ["Less wardrobe", "Rye in here, surely? A tickle", "Polite and gone"],
        score: 74,
        guess: "wick one",
      },
    ],
    ranking: [["furrow"], ["wick one"], ["hearths"], ["simmer"]],
  },
  {
    taster: "Pell",
    until: "locked",
    glasses: [
      {
        glass: "wick one",
        first: ["Apples?", "Smooth to begin with, then spicy", "A bit hot"],
        second: ["Apples, yes", "Nicer the second time", "Not so hot"],
        score: 80,
        guess: "hearths",
      },
      {
        glass: "hearths",
        first: ["Smells like cereal", "Oily, sweet", "Dry mouth"],
        second: ["Cereal with the milk gone", "Fine", "Dry"],
        score: 75,
        guess: "wick one",
      },
      {
        glass: "furrow",
        first: ["Mouthwash, sorry", "Ow", "Pepper for ages"],
        second: ["Herbs if I'm being kind", "Needed water", "Pepper"],
        score: 60,
        guess: "furrow",
      },
      {
        glass: "simmer",
        first: ["Apple pie", "Soft, like cake", "Vanilla"],
        second: ["Pie again", "Could drink this", "Don't know how to say it. Round"],
        score: 80,
        guess: "simmer",
      },
    ],
    ranking: [["wick one", "simmer"], ["hearths"], ["furrow"]],
  },
  {
    taster: "Tamsel",
    until: "locked",
    glasses: [
      {
        glass: "wick one",
        first: [
          "Hedge in June, a mint leaf torn",
          "Pot still oil with rye at the edges",
          "White pepper, cut apple",
        ],
        second: ["Mint sinks, apple up", "A gap after the first second", "Pepper"],
        score: 82,
        guess: "wick one",
        sure: 70,
      },
      {
        glass: "hearths",
        first: ["Green gooseberry, flour", "Barley sugar, rapeseed oil", "Chalk"],
        second: ["Flour", "Young. It has the oil and no years", "Chalk"],
        score: 77,
        guess: "hearths",
        sure: 90,
      },
      {
        glass: "furrow",
        first: ["Dill, pine, fresh plank", "Rye straight through", "Plank and pepper"],
        second: ["A joiner's shop", "Water brings aniseed", "Plank"],
        score: 72,
        guess: "furrow",
        sure: 70,
      },
      {
        glass: "simmer",
        first: ["Beeswax, quince", "Baked apple with nutmeg, deeper", "Long, honeycomb"],
        second: ["Wax still", "This is the older one, no question", "Honeycomb"],
        score: 86,
        guess: "simmer",
        sure: 90,
      },
    ],
    ranking: [["simmer"], ["wick one"], ["hearths"], ["furrow"]],
  },
];
