import type { Transfer } from "@partsproof/house/protocol";
import { type AtHousehold, everyItem, findVessel } from "../../door/index.ts";
import { needed, one, readAmount, readAnyText, readText } from "../../flags/index.ts";
import { printTransfers } from "../../print/vessel.ts";
import { householdCommand } from "../command.ts";

type Account = Transfer["from"];
const OUT_OF = ["tap"] as const;
const INTO = ["drain", "glass", "air"] as const;

export const shelfPour = householdCommand({
  name: "shelf pour",
  says: "Move liquid from one vessel to another, in from the tap, or out to a glass or the drain.",
  flags: {
    from: needed(readText("from"), "<vessel>|tap", "id or label; tap for water"),
    to: needed(readText("to"), "<vessel>|drain|glass|air", "id or label; air for what evaporated"),
    amount: needed(readAmount, "<amount>", "30ml, 28g or all"),
    note: one(readAnyText, "<text>", "why"),
  },
  example: 'shelf pour --from "Glass jug" --to drain --amount 30ml',
  run: async ({ flags }, here) => {
    const { client, household } = here;
    const from = await account(here, flags.from, OUT_OF, "from");
    const to = await account(here, flags.to, INTO, "to");
    const transfer = await client("addTransfer", {
      at: { household: household.id },
      body: { from, to, amount: flags.amount, ...(flags.note === undefined ? {} : { note: flags.note }) },
    });
    const labels = await vesselLabels(here);
    return { json: transfer, text: () => printTransfers([transfer], labels) };
  },
});

async function account(
  here: AtHousehold,
  text: string,
  outside: readonly ("tap" | "drain" | "glass" | "air")[],
  flag: string,
): Promise<Account> {
  const name = outside.find((word) => word === text.toLowerCase());
  if (name !== undefined) return { kind: "outside", name };
  return { kind: "vessel", vesselId: (await findVessel(here, text, [flag])).id };
}

/** Labels of all vessels by id. */
export async function vesselLabels({ client, household }: AtHousehold): Promise<ReadonlyMap<string, string>> {
  const vessels = await everyItem(client, "listVessels", { household: household.id });
  return new Map(vessels.map(({ id, label }) => [id, label]));
}
