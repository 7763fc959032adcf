import { findVessel } from "../../door/index.ts";
import { issueAt, one, readText, refuse, yes } from "../../flags/index.ts";
import { printVessel } from "../../print/vessel.ts";
import { householdCommand } from "../command.ts";

export const shelfEdit = householdCommand({
  name: "shelf edit",
  says: "What a vessel is called, or that it was opened.",
  args: { vessel: "id or label" },
  flags: {
    label: one(readText("label"), "<label>", "what to call it from now on"),
    opened: yes("it was opened, now"),
  },
  example: 'shelf edit "Glass jug" --label "Large jug"',
  run: async ({ args, flags }, here) => {
    const { label, opened } = flags;
    if (label === undefined && !opened)
      refuse(issueAt([], "flag_missing", "one of --label and --opened", null));
    const { id, version } = await findVessel(here, args.vessel, ["vessel"]);
    const vessel = await here.client("editVessel", {
      at: { household: here.household.id, vessel: id },
      body: { version, ...(label === undefined ? {} : { label }), ...(opened ? { opened: true } : {}) },
    });
    return { json: vessel, text: () => printVessel(vessel, null, here.household.currency) };
  },
});

export const shelfRemove = householdCommand({
  name: "shelf remove",
  says: "Take away a vessel that no transfer touched; any other is kept, as the ledger tells of it.",
  args: { vessel: "id or label" },
  flags: {},
  example: 'shelf remove "Glass jug"',
  run: async ({ args }, { client, household }) => {
    const { id, version, label } = await findVessel({ client, household }, args.vessel, ["vessel"]);
    await client("removeVessel", { at: { household: household.id, vessel: id }, query: { version } });
    return { json: { removed: { id, label } }, text: () => `Removed ${label}.` };
  },
});
