import type { Entry } from "./entry.ts";
import type { When } from "./script-clock.ts";

const FIRST_EVENING: When = [200, "17:10"];

type Bottle = Omit<Extract<Entry, { does: "shelve" }>, "at" | "does">;

/** What stood on the shelf when the household began to keep count. No level: full and sealed. */
const bottles: readonly Bottle[] = [
  { bottle: "lamp", of: "lamplighters rest", levelMl: 270 },
  { bottle: "gull", of: "gull stair", levelMl: 165 },
  { bottle: "hearths", of: "three hearths" },
  { bottle: "simmer", of: "long simmer", levelMl: 560 },
  { bottle: "shingle", of: "shingle bank", levelMl: 310 },
  { bottle: "wall", of: "harbour wall", levelMl: 600 },
  { bottle: "fore deck", of: "fore deck" },
  { bottle: "smoke", of: "smoke loft", levelMl: 420 },
  { bottle: "old loft", of: "old loft", levelMl: 380 },
  { bottle: "tun room", of: "tun room" },
  { bottle: "ruby", of: "ruby hour", levelMl: 350 },
  { bottle: "wharf", of: "sugar wharf", levelMl: 430 },
  { bottle: "vintner", of: "vintners bench" },
  { bottle: "oat", of: "oat loft" },
  { bottle: "furrow", of: "straight furrow", levelMl: 690 },
  { bottle: "barn", of: "barn door", levelMl: 610 },
  { bottle: "tollcorn", of: "tollcorn", levelMl: 500 },
  { bottle: "cask 41", of: "cask 41", levelMl: 380 },
  { bottle: "sack", of: "sweet sack" },
  { bottle: "field", of: "field wheat", levelMl: 640 },
  { bottle: "harvest", of: "harvest proof" },
  { bottle: "crib", of: "crib corn", levelMl: 610 },
  { bottle: "ferry", of: "ferry clay", levelMl: 820 },
  { bottle: "wheatside", of: "wheatside", levelMl: 560 },
  { bottle: "high bank", of: "high bank" },
  { bottle: "column", of: "column light", levelMl: 300 },
  { bottle: "sixteen", of: "grain sixteen", levelMl: 330 },
  { bottle: "counter", of: "counter blend", levelMl: 400 },
];

export const shelf: readonly Entry[] = [
  ...bottles.map((bottle): Entry => ({ at: FIRST_EVENING, does: "shelve", ...bottle })),
  {
    at: [92, "12:30"],
    does: "shelve",
    bottle: "hearths two",
    of: "three hearths",
    label: "Three Hearths, second bottle",
    paidMinor: 5400,
  },
  { at: [70, "12:10"], does: "shelve", bottle: "kettle", of: "full kettle" },
  { at: [140, "21:40"], does: "pour", from: "old loft", to: "glass", ml: 20, note: "Jorren's birthday." },
  {
    at: [30, "22:05"],
    does: "pour",
    from: "lamp",
    to: "glass",
    ml: 15,
    note: "One small measure, to remember it by.",
  },
  {
    at: [28, "18:50"],
    does: "pour",
    from: "tollcorn",
    to: "drain",
    ml: 12,
    note: "Knocked over. Honest books.",
  },
];
