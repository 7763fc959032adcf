import type { SheetScript } from "./flight-script.ts";

/** Tamsel alone, with four kinds of wine and rum oak, by the places on the table. */
export const kitchenTableSheets: readonly SheetScript[] = [
  {
    taster: "Tamsel",
    until: "locked",
    glasses: [
      {
        glass: "ruby",
        first: ["Dusty cherry, bung cloth", "Tannin at the sides, plum", "Dry, cocoa"],
        second: ["Cherry", "Drier than it smells", "Cocoa"],
        score: 76,
        guess: "vintner",
      },
      {
        glass: "wall",
        first: ["Walnut, raisin, polish", "Nut cake, tidy", "Cocoa nib, medium"],
        second: ["Walnut", "Fortified wine, dry sort", "Medium"],
        score: 85,
        guess: "wall",
      },
      {
        glass: "vintner",
        first: ["Blackcurrant jam", "Jam, then a handful of twigs", "Twigs"],
        second: ["Jam", "Sweet entry, I say fortified", "Pulls the cheeks in"],
        score: 76,
        guess: "ruby",
      },
      {
        glass: "wharf",
        first: ["Banana skin, brown sugar", "Sponge pudding", "Sugar, a touch of smoke from somewhere"],
        second: ["Banana", "No hiding this one", "Sugar"],
        score: 80,
        guess: "wharf",
      },
    ],
    ranking: [["wall"], ["wharf"], ["ruby", "vintner"]],
  },
];
