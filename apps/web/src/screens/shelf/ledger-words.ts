import type { Account, Transfer } from "@partsproof/house/protocol";
import { printG, printMl } from "../../figures/index.ts";

const OUTSIDE: Readonly<Record<"shop" | "tap" | "glass" | "drain" | "air", string>> = {
  shop: "the shop",
  tap: "the tap",
  glass: "a glass",
  drain: "the drain",
  air: "the air",
};

/** One line of a vessel's history, seen from that vessel: "200 mL to Blending bottle 2". */
export function ledgerWords(
  transfer: Transfer,
  vesselId: string,
  labels: ReadonlyMap<string, string>,
): string {
  const amount =
    transfer.amount.kind === "all"
      ? "all of it"
      : transfer.amount.kind === "mass"
        ? printG(transfer.amount.g)
        : printMl(transfer.amount.ml);
  const name = (account: Account): string =>
    account.kind === "outside" ? OUTSIDE[account.name] : (labels.get(account.vesselId) ?? "another vessel");
  const isInto = transfer.to.kind === "vessel" && transfer.to.vesselId === vesselId;
  return isInto ? `${amount} in from ${name(transfer.from)}` : `${amount} out to ${name(transfer.to)}`;
}
