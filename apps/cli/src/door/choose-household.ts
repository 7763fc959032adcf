import type { Client, Household } from "@partsproof/house/protocol";
import { issueAt, refuse } from "../flags/index.ts";
import { everyItem } from "./every-item.ts";
import { pick } from "./pick.ts";

/** The household that was named, or the only one there is. */
export async function chooseHousehold(
  client: Client,
  text: string | undefined,
  path: readonly string[] = ["household"],
): Promise<Household> {
  const households = await everyItem(client, "listHouseholds");
  const named = households.map((household) => ({
    id: household.id,
    names: [household.name] as [string],
    household,
  }));
  if (text !== undefined) return pick("household", text, named, path).household;
  const [only] = households;
  if (only !== undefined && households.length === 1) return only;
  const list = households.map(({ name, id }) => `${name} (${id})`).join(", ");
  const limit =
    only === undefined
      ? 'one to begin with: `household add "<name>"`, or the invented one by `demo load`'
      : `to be named where there are several: ${list}`;
  refuse(issueAt(path, only === undefined ? "no_household" : "household_not_named", limit, null));
}
