import type { EntryThat } from "./entry.ts";
import { idOf, type Play } from "./play.ts";

export async function playBatch(play: Play, entry: EntryThat<"make">): Promise<void> {
  const { batch, name, recipe, bottle, pours, note } = entry;
  const made = await play.ask("addBatch", {
    at: { household: play.known.household },
    body: {
      name,
      recipeId: idOf(play, "recipes", recipe),
      vessel: { kind: "new", ...bottle },
      pours: pours.map(([from, ml]) => ({
        from: from === "tap" ? { kind: "water" } : { kind: "vessel", vesselId: idOf(play, "vessels", from) },
        amount: { kind: "volume", ml },
      })),
      note,
    },
  });
  play.known.batches.set(batch, made.id);
  play.known.vessels.set(batch, made.vesselId);
  play.known.names.set(batch, `batch:${made.id}`);
}

export async function playRemark(play: Play, entry: EntryThat<"remark">): Promise<void> {
  const at = { household: play.known.household, batch: idOf(play, "batches", entry.batch) };
  const { version, note: before } = await play.ask("getBatch", { at });
  const { note, finished = false } = entry;
  await play.ask("editBatch", { at, body: { version, finished, note: `${before} ${note}` } });
}
