import { issueAt, refuse } from "../../flags/index.ts";

/** Nobody signs in to a house in this process: who may open its data folder is its owner. */
export function needHouse(flags: Readonly<Record<string, unknown>> & { readonly house?: string }): URL {
  if (flags.house !== undefined) return new URL(flags.house);
  return refuse(issueAt(["house"], "flag_missing", "the address of a house that is running", null));
}
