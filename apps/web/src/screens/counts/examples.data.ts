/** The files of the folder examples, to begin with: all of it invented. A test sees that they stay the same. */
export const EXAMPLES = {
  rank: `{
  "items": ["Lamplighter's Rest", "Beside the Lamp", "Loud Rye", "Odd Ends"],
  "rankings": [
    [["Lamplighter's Rest"], ["Beside the Lamp"], ["Loud Rye"], ["Odd Ends"]],
    [["Beside the Lamp"], ["Lamplighter's Rest", "Loud Rye"], ["Odd Ends"]],
    [["Lamplighter's Rest"], ["Beside the Lamp"], ["Odd Ends"], ["Loud Rye"]],
    [["Loud Rye"], ["Beside the Lamp"], ["Lamplighter's Rest"], ["Odd Ends"]],
    [["Beside the Lamp"], ["Lamplighter's Rest"], ["Odd Ends"], ["Loud Rye"]],
    [["Lamplighter's Rest"], ["Loud Rye"], ["Beside the Lamp"], ["Odd Ends"]]
  ]
}
`,
  pairs: `{
  "items": ["Lamplighter's Rest", "Beside the Lamp", "Loud Rye"],
  "wins": [[0, 5, 7], [3, 0, 6], [2, 4, 0]],
  "ties": [[0, 2, 1], [2, 0, 0], [1, 0, 0]]
}
`,
  mixture: `{
  "components": ["malt", "rye", "wheat"],
  "runs": [
    { "x": [1, 0, 0], "y": 610 },
    { "x": [1, 0, 0], "y": 585 },
    { "x": [0, 1, 0], "y": 540 },
    { "x": [0, 1, 0], "y": 562 },
    { "x": [0, 0, 1], "y": 505 },
    { "x": [0, 0, 1], "y": 498 },
    { "x": [0.5, 0.5, 0], "y": 690 },
    { "x": [0.5, 0.5, 0], "y": 671 },
    { "x": [0.5, 0, 0.5], "y": 600 },
    { "x": [0, 0.5, 0.5], "y": 533 }
  ]
}
`,
} as const;
