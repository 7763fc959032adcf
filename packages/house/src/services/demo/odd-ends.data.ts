import type { Entry } from "./entry.ts";

const topUp = (at: Entry["at"], from: string, ml: number | "all", note = ""): Entry => ({
  at,
  does: "pour",
  from,
  to: "odd ends",
  ml,
  note,
});
const sip = (at: Entry["at"], ml: number, note: string): Entry => ({
  at,
  does: "pour",
  from: "odd ends",
  to: "glass",
  ml,
  note,
});

/** The odd-ends bottle: never empty, topped up with whatever is left over. */
export const oddEnds: readonly Entry[] = [
  {
    at: [198, "18:00"],
    does: "set out",
    vessel: "odd ends",
    kind: "blending bottle",
    label: "The odd-ends bottle",
    capacityMl: 1000,
  },
  topUp([198, "18:05"], "counter", 100, "Begun with what nobody drinks."),
  topUp([190, "21:00"], "shingle", 60),
  topUp([178, "21:00"], "tollcorn", 55),
  topUp([169, "21:10"], "column", 60, "To lighten it."),
  topUp([162, "20:40"], "ferry", 80),
  sip([155, "22:00"], 40, "Better than it has any right to be."),
  topUp([146, "20:00"], "crib", 45),
  topUp([131, "21:15"], "shingle", 70),
  topUp([121, "21:20"], "counter", 90),
  {
    at: [113, "20:50"],
    does: "pour",
    from: "tollcorn",
    to: "odd ends",
    ml: 160,
    as: "slip",
    note: "In haste.",
  },
  { at: [113, "20:52"], does: "undo", pour: "slip" },
  topUp([113, "20:53"], "tollcorn", 16, "Sixteen, not a hundred and sixty: entered again."),
  topUp([99, "21:00"], "wharf", 30),
  sip([84, "22:10"], 60, "Two of us, after the washing-up."),
  topUp([58, "19:15"], "wick one", "all", "The last of the first make: a blend into a blend."),
  topUp([45, "20:00"], "hearths", "all", "The end of the first bottle."),
  topUp([33, "20:20"], "sixteen", 25),
  sip([21, "22:00"], 50, "Rye in it now."),
  topUp([9, "20:30"], "ruby", 20, "For colour, says Pell."),
];
