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
        sure: 50,
      },
      {
        glass: "wall",
        first: ["Walnut, raisin, polish", "Nut cake, tidy", "Cocoa nib, medium"],
        second: ["Walnut", "Fortified wine, dry sort", "Medium"],
        score: 85,
        guess: "wall",
        sure: 70,
      },
      {
        glass: "vintner",
        first: ["Blackcurrant jam", "Jam, then a handful of twigs", "Twigs"],
        second: ["Jam", "Sweet entry, I say fortified", "Pulls the cheeks in"],
        score: 76,
        guess: "ruby",
        sure: 70,
      },
      {
        glass: "wharf",
        first: ["Banana skin, brown sugar", "Sponge pudding", "Sugar, a touch of smoke from somewhere"],
        second: ["Banana", "No hiding this one", "Sugar"],
        score: 80,
        guess: "wharf",
        sure: 90,
      },
    ],
    ranking: [["wall"], ["wharf"], ["ruby", "vintner"]],
  },
];
