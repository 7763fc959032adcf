import type { Rest } from "@partsproof/house/protocol";
import { type AtHousehold, findBatch } from "../../door/index.ts";
import { issueAt, one, readDay, readText, refuse } from "../../flags/index.ts";

/** The rest of a batch that goes on, or `null`; the newest where all have ended. */
async function newestRest(here: AtHousehold, text: string): Promise<Rest | null> {
  const { id } = await findBatch(here, text, ["batch"]);
  const { items } = await here.client("listRests", { at: { household: here.household.id, batch: id } });
  return items.find(({ endedAt }) => endedAt === null) ?? items[0] ?? null;
}

export async function findRest(here: AtHousehold, text: string): Promise<Rest> {
  const rest = await newestRest(here, text);
  if (rest !== null) return rest;
  refuse(issueAt(["batch"], "no_rest", 'a batch that rests: rest begin "<batch>" --oak', text));
}

/** When it was: a day, at noon in UTC; now for today and where nothing was said. */
export const dayFlag = one(readDay, "<day>", "when it was, such as 2026-11-12; now where left out");

export function momentOn(day: string | undefined): { readonly at?: string } {
  if (day === undefined) return {};
  const at = `${day}T12:00:00.000Z`;
  const today = new Date().toISOString();
  return day === today.slice(0, 10) && at > today ? {} : { at };
}

export const batchArg = { batch: "id or name" };
export const noteFlag = one(readText("note"), "<text>", "whatever else matters");
