import type { Transfer, Vessel, Whiskey } from "@partsproof/house/protocol";
import { columns } from "./columns.ts";
import { contentsFacts, liquidFacts } from "./contents.ts";
import { facts } from "./facts.ts";
import { abv, day, instant, ml, money } from "./figures.ts";
import { whiskeyFacts } from "./whiskey.ts";

const state = ({ kind, sealed, openedAt }: Vessel): string => {
  if (kind !== "bottle") return "";
  return sealed ? "sealed" : `opened ${day(openedAt)}`;
};

export const printVessels = (vessels: readonly Vessel[]): string =>
  columns(
    vessels,
    [
      { head: "Vessel", cell: ({ label }) => label },
      { head: "Kind", cell: ({ kind }) => kind },
      { head: "Holds", cell: ({ contents }) => ml(contents.volumeMl), right: true },
      { head: "Of", cell: ({ capacityMl }) => ml(capacityMl), right: true },
      { head: "Strength", cell: ({ contents }) => abv(contents.abv20), right: true },
      { head: "", cell: state },
      { head: "Id", cell: ({ id }) => id },
    ],
    "The shelf is empty. Put a bottle on it: shelf add",
  );

export const printVessel = (vessel: Vessel, whiskey: Whiskey | null, currency: string): string =>
  facts([
    ["Vessel", `${vessel.label}, ${vessel.kind} of ${ml(vessel.capacityMl)}`],
    ["State", state(vessel) === "" ? null : state(vessel)],
    ...(whiskey !== null && holdsOnly(vessel)
      ? liquidFacts(vessel.contents, currency)
      : contentsFacts(vessel.contents, currency)),
    ["Kept for flights", vessel.keptMl > 0 ? `${ml(vessel.keptMl)}, not free to pour` : null],
    ["Paid", vessel.priceMinor === null ? null : money(vessel.priceMinor, currency)],
    ...(whiskey === null ? [] : whiskeyFacts(whiskey, currency)),
    ["Id", vessel.id],
  ]);

/** Then its composition, age, grain and casks are those on its label and need not be told twice. */
const holdsOnly = ({ whiskeyId, contents }: Vessel): boolean =>
  contents.composition.every(({ liquidId }) => liquidId === whiskeyId);

type Account = Transfer["from"];

function amount({ amount }: Transfer): string {
  if (amount.kind === "all") return "all";
  return amount.kind === "mass" ? `${amount.g} g` : ml(amount.ml);
}

/** The ledger; `labels` names the vessels. */
export function printTransfers(transfers: readonly Transfer[], labels: ReadonlyMap<string, string>): string {
  const place = (account: Account): string =>
    account.kind === "outside" ? account.name : (labels.get(account.vesselId) ?? account.vesselId);
  return columns(
    transfers,
    [
      { head: "No.", cell: ({ seq }) => String(seq), right: true },
      { head: "At", cell: ({ at }) => instant(at) },
      { head: "From", cell: ({ from }) => place(from) },
      { head: "To", cell: ({ to }) => place(to) },
      { head: "Amount", cell: amount, right: true },
      { head: "", cell: ({ undoneAt }) => (undoneAt === null ? "" : "undone") },
      { head: "Id", cell: ({ id }) => id },
    ],
    "Nothing was moved yet.",
  );
}
