import type { Account } from "../../protocol/index.ts";
import type { EntryThat } from "./entry.ts";
import { idOf, type Play } from "./play.ts";

const OUTSIDE = ["tap", "glass", "drain", "air"] as const;

function sideOf(play: Play, key: string): Account {
  const name = OUTSIDE.find((outside) => outside === key);
  return name ? { kind: "outside", name } : { kind: "vessel", vesselId: idOf(play, "vessels", key) };
}

export async function playPour(play: Play, entry: EntryThat<"pour">): Promise<void> {
  const { from, to, ml, note = "", as } = entry;
  const { id } = await play.ask("addTransfer", {
    at: { household: play.known.household },
    body: {
      from: sideOf(play, from),
      to: sideOf(play, to),
      amount: ml === "all" ? { kind: "all" } : { kind: "volume", ml },
      note,
    },
  });
  if (as !== undefined) play.known.transfers.set(as, id);
}

export async function playUndo(play: Play, { pour }: EntryThat<"undo">): Promise<void> {
  const at = { household: play.known.household, transfer: idOf(play, "transfers", pour) };
  await play.ask("undoTransfer", { at });
}
