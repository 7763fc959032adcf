import type { TrialSet } from "@partsproof/house/protocol";
import { type AtHousehold, everyItem, findSlot } from "../../door/index.ts";
import { pick } from "../../door/pick.ts";
import {
  issueAt,
  many,
  needed,
  one,
  type Read,
  readAnyText,
  readText,
  readWhole,
  refuse,
  some,
} from "../../flags/index.ts";
import { unread } from "../../flags/read-number.ts";
import { printTrialSet, printTrialSets } from "../../print/trial-set.ts";
import { householdCommand } from "../command.ts";
import { planFlags, planPlaces, plannedAs } from "./plan-flags.ts";

interface Part {
  readonly of: string;
  readonly low?: number;
  readonly high?: number;
}

/** "Barn Door:0.2-0.6": a whiskey or a batch, and what its share may be. */
const readPart: Read<Part> = (text) => {
  const form = /^(.+?)(?::(0|1|0?\.\d+)-(0|1|1\.0+|0?\.\d+))?$/.exec(text.trim());
  if (form === null)
    return unread("part", "part_unreadable", "<whiskey>[:<low>-<high>], such as Barn Door:0.2-0.6", text);
  const [, of = "", low, high] = form;
  const bounds = low === undefined || high === undefined ? {} : { low: Number(low), high: Number(high) };
  return { ok: true, value: { of: of.trim(), ...bounds } };
};

const shown = (set: TrialSet) => ({ json: set, text: () => printTrialSet(set) });

export const trialAdd = householdCommand({
  name: "trial add",
  says: "Plan a set of bench trials of what is on the shelf, and keep it. Nothing is poured yet.",
  flags: {
    name: needed(readText("name"), "<name>", "what the set is called"),
    part: some(readPart, "<whiskey>[:<low>-<high>]", "a whiskey or a batch, and what its share may be"),
    ...planFlags,
    note: one(readAnyText, "<text>", "whatever else matters"),
  },
  example:
    'trial add --name "November bench" --part "Barn Door" --part "Sweet Sack" --plan lattice --steps 2',
  places: planPlaces,
  run: async ({ flags }, here) => {
    const { name, part, note, ...plan } = flags;
    const parts = [];
    for (const [i, { of, ...bounds }] of part.entries()) {
      const found = await findSlot(here, of, ["part", i]);
      if (found.kind === "open") refuse(issueAt(["part", i], "part_unreadable", "a whiskey or a batch", of));
      parts.push({ of: found, ...bounds });
    }
    const set = await here.client("addTrialSet", {
      at: { household: here.household.id },
      body: { name, parts, ...(note === undefined ? {} : { note }), ...plannedAs(plan) },
    });
    return shown(set);
  },
});

export const trialList = householdCommand({
  name: "trial list",
  says: "Sets of bench trials, newest first.",
  flags: {},
  example: "trial list",
  run: async (_given, { client, household }) => {
    const items = await everyItem(client, "listTrialSets", { household: household.id });
    return { json: { items, next: null }, text: () => printTrialSets(items) };
  },
});

const which = { set: "id or name" };

export const trialShow = householdCommand({
  name: "trial show",
  says: "One set: its mixes, what to draw of each bottle, the vials, and how they did.",
  args: which,
  flags: {},
  example: 'trial show "November bench"',
  run: async ({ args }, here) => shown(await findSet(here, args.set)),
});

export const trialPour = householdCommand({
  name: "trial pour",
  says: "Pour trials into vials of their own, as planned. Takes it off the shelf, all of it or none.",
  args: which,
  flags: {
    only: many(
      readWhole("trial", 1, 40),
      "<number>",
      "this trial; again for another; else all that are left",
    ),
  },
  example: 'trial pour "November bench" --only 1 --only 3',
  places: { trials: "only" },
  run: async ({ args, flags }, here) => {
    const { id, version } = await findSet(here, args.set);
    const trials = flags.only.map((trial) => ({ trial }));
    const set = await here.client("pourTrials", {
      at: { household: here.household.id, trials: id },
      body: { version, ...(trials.length === 0 ? {} : { trials }) },
    });
    return shown(set);
  },
});

export const trialUndo = householdCommand({
  name: "trial undo",
  says: "Undo the pouring of a set, if nothing was poured out of its vials since.",
  args: which,
  flags: {},
  example: 'trial undo "November bench"',
  run: async ({ args }, here) => {
    const { id } = await findSet(here, args.set);
    return shown(await here.client("undoTrials", { at: { household: here.household.id, trials: id } }));
  },
});

export const trialRemove = householdCommand({
  name: "trial remove",
  says: "Remove a set of which nothing is poured.",
  args: which,
  flags: {},
  example: 'trial remove "November bench"',
  run: async ({ args }, here) => {
    const { id, name, version } = await findSet(here, args.set);
    await here.client("removeTrialSet", {
      at: { household: here.household.id, trials: id },
      query: { version: String(version) },
    });
    return { json: { id, removed: true }, text: () => `Removed: ${name}` };
  },
});

async function findSet({ client, household }: AtHousehold, text: string): Promise<TrialSet> {
  const sets = await everyItem(client, "listTrialSets", { household: household.id });
  const named = sets.map((set) => ({ id: set.id, names: [set.name] as [string], set }));
  return pick("set of trials", text, named, ["set"]).set;
}
