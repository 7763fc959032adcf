import type { House, Records } from "../ports.ts";
import type { BatchRow } from "../rows.ts";
import { post } from "../shelf/index.ts";

/** What goes with the wood, or stays in the filter, leaves the vessel by the ledger. */
export async function loseWithWood(
  records: Records,
  house: House,
  { householdId, vesselId }: Pick<BatchRow, "householdId" | "vesselId">,
  lost: { readonly ml: number; readonly note: string },
): Promise<void> {
  await post(records, house, householdId, [
    {
      from: { kind: "vessel", vesselId },
      to: { kind: "outside", name: "drain" },
      amount: { kind: "volume", ml: lost.ml },
      liquid: null,
      note: lost.note,
      path: ["lossMl"],
    },
  ]);
}
