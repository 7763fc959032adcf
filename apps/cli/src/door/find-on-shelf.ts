import type { Transfer, Vessel, Whiskey } from "@partsproof/house/protocol";
import type { AtHousehold, Path } from "./at-household.ts";
import { everyItem } from "./every-item.ts";
import { pick } from "./pick.ts";

/** Maker, name and release as one line, as the house writes it. */
export const whiskeyLabel = ({ maker, name, release }: Pick<Whiskey, "maker" | "name" | "release">): string =>
  [maker, name, release].filter((part) => part !== "").join(" ");

/** By id, by "maker name release", or by any shorter form of it that has the name. */
export const namedWhiskey = (whiskey: Whiskey) => ({
  id: whiskey.id,
  names: [
    whiskeyLabel(whiskey),
    [whiskey.maker, whiskey.name].join(" "),
    whiskeyLabel({ ...whiskey, maker: "" }),
    whiskey.name,
  ] as [string, ...string[]],
  whiskey,
});

export async function findWhiskey(here: AtHousehold, text: string, path: Path): Promise<Whiskey> {
  const whiskeys = await everyItem(here.client, "listWhiskeys", { household: here.household.id });
  return pick("whiskey", text, whiskeys.map(namedWhiskey), path).whiskey;
}

const namedVessel = (vessel: Vessel) => ({ id: vessel.id, names: [vessel.label] as [string], vessel });

export async function findVessel(here: AtHousehold, text: string, path: Path): Promise<Vessel> {
  const vessels = await everyItem(here.client, "listVessels", { household: here.household.id });
  return pick("vessel", text, vessels.map(namedVessel), path).vessel;
}

/** A transfer has no name: its id, or a beginning of it. */
export async function findTransfer(here: AtHousehold, text: string, path: Path): Promise<Transfer> {
  const transfers = await everyItem(here.client, "listTransfers", { household: here.household.id });
  const named = transfers.map((transfer) => ({
    id: transfer.id,
    names: [`no. ${transfer.seq}`] as [string],
    transfer,
  }));
  return pick("transfer", text, named, path).transfer;
}
