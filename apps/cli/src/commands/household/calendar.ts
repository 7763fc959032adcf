import { writeWhole } from "../../files/index.ts";
import { pick } from "../../door/index.ts";
import { needed, one, readText } from "../../flags/index.ts";
import { columns } from "../../print/columns.ts";
import { day } from "../../print/figures.ts";
import { householdCommand } from "../command.ts";

export const calendar = householdCommand({
  name: "calendar",
  says: "What is due on which day, as an iCalendar file for any calendar program.",
  flags: {
    zone: one(
      readText("zone"),
      "<zone>",
      "whose clock says which day it is, such as Europe/Paris; UTC where left out",
    ),
    to: needed(readText("to"), "<file>", "a file that is not there yet; - for standard output"),
  },
  example: "calendar --zone Europe/Paris --to saltreach.ics",
  run: async ({ flags }, { client, household }) => {
    const { zone } = flags;
    const told = await client("getCalendar", {
      at: { household: household.id },
      query: zone === undefined ? {} : { zone },
    });
    if (flags.to === "-") return { json: told, text: () => told.text.trimEnd() };
    const bytes = await writeWhole(flags.to, told.text, ["to"]);
    const json = { file: flags.to, bytes, events: told.events, zone: told.zone };
    const days = told.events === 1 ? "1 day is" : `${told.events} days are`;
    return { json, text: () => `${household.name}: ${days} in ${flags.to}` };
  },
});

export const calendarLink = householdCommand({
  name: "calendar link",
  says: "A secret address that a calendar program follows: dates and neutral words alone. Told this once.",
  args: { label: "what follows it, such as phone" },
  flags: {
    zone: one(
      readText("zone"),
      "<zone>",
      "whose clock says which day it is, such as Europe/Paris; UTC where left out",
    ),
  },
  example: 'calendar link "phone" --zone Europe/Paris',
  run: async ({ args, flags }, { client, household }) => {
    const json = await client("addCalendarLink", {
      at: { household: household.id },
      body: { label: args.label, ...(flags.zone === undefined ? {} : { zone: flags.zone }) },
    });
    return {
      json,
      text: () => `${json.label}: the address of the house, then ${json.path}`,
      notes: ["Whoever has this address can read the dates. It is not shown again: calendar revoke ends it."],
    };
  },
});

export const calendarLinks = householdCommand({
  name: "calendar links",
  says: "The secret addresses of the calendar, without what is secret.",
  flags: {},
  example: "calendar links",
  run: async (_given, { client, household }) => {
    const json = await client("listCalendarLinks", { at: { household: household.id } });
    const text = () =>
      columns(
        json.items,
        [
          { head: "Link", cell: ({ label }) => label },
          { head: "Zone", cell: ({ zone }) => zone },
          { head: "Made", cell: ({ createdAt }) => day(createdAt) },
          { head: "Revoked", cell: ({ revokedAt }) => (revokedAt === null ? "" : day(revokedAt)) },
          { head: "Id", cell: ({ id }) => id },
        ],
        "No link yet: calendar link <label>",
      );
    return { json, text };
  },
});

export const calendarRevoke = householdCommand({
  name: "calendar revoke",
  says: "Revoke a secret address of the calendar: it opens nothing more.",
  args: { link: "id or label" },
  flags: {},
  example: 'calendar revoke "phone"',
  run: async ({ args }, { client, household }) => {
    const at = { household: household.id };
    const { items } = await client("listCalendarLinks", { at });
    const open = items.filter(({ revokedAt }) => revokedAt === null);
    const named = open.map(({ id, label }) => ({ id, names: [label] as [string] }));
    const { id } = pick("calendar link", args.link, named, ["link"]);
    const json = await client("revokeCalendarLink", { at: { ...at, link: id } });
    return { json, text: () => `${json.label}: revoked, it opens nothing more.` };
  },
});
